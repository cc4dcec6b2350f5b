/**
 * The door to the physics of a car's cooling. {@link headertank.calc.Rater} takes what is known of a car
 * ({@code carspec}) and how it is used ({@code duty}) and hands back a {@link headertank.calc.Rating}: a verdict for each duty with
 * its probability, risky choices with what they cost, what was assumed, what would help.
 *
 * <p>On the way a gap becomes an assumption with a spread ({@code carspec}); the values become models ({@code rating}, from
 * {@code engine}, {@code radiator}, {@code air}, {@code coolant}, {@code oil}, {@code electric}, {@code control}, {@code sensor} and
 * {@code hood} over {@code fluid}); the models balance at each operating point and are driven through the schedule
 * ({@code transients}); the duty says what counts ({@code judged}); the same is done for sampled cars ({@code uncertainty}); policies
 * judge ({@code verdict}) and rules warn ({@code risk}). Each package tells its part on its own page.
 *
 * <p>Everything is immutable, without I/O, clock or locale; the same values give the same rating to the last bit. Numbers are in SI,
 * the unit in the name.
 */
package headertank.calc;
