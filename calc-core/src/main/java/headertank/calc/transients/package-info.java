/**
 * A car driven through a schedule.
 *
 * <p>Six lumped masses exchange heat: engine metal, coolant in block and head, coolant in hoses and radiator, core metal, oil, air
 * under the hood ({@code LumpedCar} has the equations). Thermostat and sensors lag; fans follow their control's stages. The cooling
 * at each operating point is read from a table of solved states, made exact where the car settles
 * ({@link headertank.calc.transients.CoolingTable}), so that the end of a long stay is the steady solver's.
 *
 * <p>The equations are integrated by Dormand and Prince's method of order 5(4) (J. Comput. Appl. Math. 6 (1980) 19-26, from memory)
 * with an absolute tolerance of 1 mK; the integration stops exactly at ends of phases and where a fan is switched
 * ({@link headertank.calc.transients.RunSolver}). What is broken or switched otherwise is asked for in
 * {@link headertank.calc.transients.RunSettings}. Masses are guessed with a wide spread until a warm-up is logged
 * ({@link headertank.calc.transients.Masses}); published warm-ups are compared in the tests.
 *
 * <p>The same car replays a log: its engine speed, manifold pressure and road speed take the place of a schedule
 * ({@link headertank.calc.transients.LogReplay}). Air per turn comes from manifold pressure and intake temperature, less what the
 * exhaust of the last cycle leaves no room for (C. F. Taylor, The Internal Combustion Engine in Theory and Practice, 1985, ideal
 * inlet process, from memory); with it burns fuel at lambda 1.
 */
package headertank.calc.transients;
