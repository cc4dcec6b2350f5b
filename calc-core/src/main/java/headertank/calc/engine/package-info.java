/**
 * From brake power and speed to the heat in coolant and oil.
 *
 * <p>The energy balance is closed: fuel power is brake power, heat to coolant, oil and exhaust, what leaves unburnt, and the rest
 * ({@link headertank.calc.engine.HeatSplit}). {@link headertank.calc.engine.EngineHeat} goes its way in that order: friction by the
 * fit of Barnes-Moss as J. B. Heywood, <i>Internal Combustion Engine Fundamentals</i>, 1988, gives it (eq. 13.6, from memory); the
 * work of throttling from the manifold's pressure; indicated power and released heat by the class's efficiency; then the shares of
 * released heat that cross the walls and reach the oil, scaled with load and fuel. The shares stand in
 * {@link headertank.calc.engine.EngineClass}: modelling choices, each with its spread, which a measured efficiency or a log
 * replaces.
 *
 * <p>Heat is concave in load: a duty is a mean over {@link headertank.calc.engine.EngineMode}s, never heat at the mean load.
 * {@link headertank.calc.engine.ColdEngine} says what differs while an engine warms up.
 */
package headertank.calc.engine;
