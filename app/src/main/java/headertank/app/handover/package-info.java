/** Handing a car over: a check list made from its build, readings beside what is expected, photos, and the last word. */
package headertank.app.handover;
