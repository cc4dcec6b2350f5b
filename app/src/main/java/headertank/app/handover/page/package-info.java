/** The pages of the check list, of its day and of the last word. */
package headertank.app.handover.page;
