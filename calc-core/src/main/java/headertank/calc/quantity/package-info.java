/**
 * What every other package counts in: numbers with their SI unit in the name, where a number came from, how far it may be off,
 * and what is said when a model leaves the range of its source.
 *
 * <p>A stated value ({@link headertank.calc.quantity.Stated}) carries its {@link headertank.calc.quantity.Provenance}, and with it
 * a {@link headertank.calc.quantity.Spread}: one standard deviation, as a share for sizes and flows (log-normal, so that nothing
 * turns negative) or in the unit itself for temperatures (normal), and a factor on the mean where claims are known to flatter.
 * Choices are {@link headertank.calc.quantity.Chosen}.
 *
 * <p>Three things may happen at the end of a model's range, and no fourth: an
 * {@link headertank.calc.quantity.OutOfRangeException}, a clamped value with a {@link headertank.calc.quantity.Note}, or a widened
 * spread with a note. {@link headertank.calc.quantity.InputException} lists every fault of an input at once.
 *
 * <p>Where something is worked out by search, a bracket that cannot open again stands behind it
 * ({@link headertank.calc.quantity.BracketStep}); the figures of a calculation are written down as
 * {@link headertank.calc.quantity.WorkingLine}s with symbol, unit and source.
 */
package headertank.calc.quantity;
