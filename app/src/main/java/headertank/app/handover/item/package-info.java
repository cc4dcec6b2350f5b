/** What a check list holds: its items, made from what was rated, and what was entered for each. */
package headertank.app.handover.item;
