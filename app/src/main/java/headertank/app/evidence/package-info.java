/**
 * Evidence of a car as it is kept, in the order in which it came, and what is learned from it: worked out once, kept by what it follows
 * from ({@link headertank.app.evidence.Lessons}), and given to whoever rates that car. What a piece means to calc-core is said by an
 * {@link headertank.app.evidence.EvidenceReader}; its pages are in {@code known}.
 */
package headertank.app.evidence;
