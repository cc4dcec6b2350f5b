/**
 * What was seen of a car or of one of its parts, as plain figures in SI: a reading that has settled, the readings of a cold start in the
 * workshop, a sheet or bench test of core, fan or pump, a log, and that it never ran hot ({@link headertank.calc.evidence.Evidence}). Each
 * says how far it may be off itself. What follows from them is a {@link headertank.calc.carspec.Learned}, made behind the door by
 * {@code learning}.
 */
package headertank.calc.evidence;
