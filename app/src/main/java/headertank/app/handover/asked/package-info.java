/** Which items of the check list a shop asks for a duty, as its owner has decided. */
package headertank.app.handover.asked;
