/** What a car should show when it idles in the workshop, and how far a reading may be from that. */
package headertank.calc.workshop;
