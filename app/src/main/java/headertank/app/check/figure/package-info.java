/** Figures of a check as one shop reads them. */
package headertank.app.check.figure;
