/** Turns a rating into what is stored of it, with what is driven once more for that. */
package headertank.app.check.snapshot;
