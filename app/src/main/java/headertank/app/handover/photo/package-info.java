/** Pictures that belong to items of a check list, made anew from what was sent. */
package headertank.app.handover.photo;
