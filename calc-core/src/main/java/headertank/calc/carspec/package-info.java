/**
 * What is known of a car, and what stands in for the rest.
 *
 * <p>{@link headertank.calc.carspec.BuildField} lists every field once: key, unit, allowed range or kind of option, and how far a
 * value of each provenance may be off. A {@link headertank.calc.carspec.Build} holds what was stated; it refuses faults all at once,
 * also what contradicts itself. {@link headertank.calc.carspec.Resolved} has every gap filled, in this order: what was stated, a
 * shop's own figure, the table of defaults by class of car ({@code ClassDefaults}; common practice, no source, each with a wide
 * spread, so that a gap is never free). Each filled gap is an {@link headertank.calc.carspec.Assumption} with its reason.
 *
 * <p>Two builds differ in {@link headertank.calc.carspec.FieldChange}s; a {@link headertank.calc.carspec.Change} is a difference that
 * can be made by itself, with what only makes sense together.
 */
package headertank.calc.carspec;
