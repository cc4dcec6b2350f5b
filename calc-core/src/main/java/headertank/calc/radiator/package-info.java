/**
 * Heat and pressure drops of a radiator of flat tubes with fins between them.
 *
 * <p>The resistance {@code 1/UA} is a sum of four in series: fins with their efficiency, the joint of fin and tube, the tube's
 * wall, the coolant in the tube with its deposits ({@link headertank.calc.radiator.Radiator}). Louvred fins follow Y.-J. Chang and
 * C.-C. Wang, Int. J. Heat Mass Transfer 40 (1997) 533-544 for heat, and Y.-J. Chang, K.-C. Hsu, Y.-T. Lin, C.-C. Wang, same
 * journal 43 (2000) 2237-2243 for friction ({@link headertank.calc.radiator.LouveredFins}); plain fins are laminar flow that
 * develops between plates ({@link headertank.calc.radiator.PlainFins}); tubes go from laminar over transition to turbulent flow
 * without a jump, with the correlation of V. Gnielinski, Int. Chem. Eng. 16 (1976) 359-368 at the turbulent end
 * ({@link headertank.calc.radiator.TubeFlow}).
 *
 * <p>Heat then follows from effectiveness and transfer units: cross flow with both streams unmixed, as an exact series
 * ({@link headertank.calc.radiator.CrossFlow}), and passes one after the other ({@link headertank.calc.radiator.Passes}). Properties
 * are taken at the mean temperature of each stream, found in turns.
 *
 * <p>Each correlation states its range, its spread and a note where it is left; a maker's sheet of the very core moves the
 * correlations' level and narrows their spread ({@code learning}).
 */
package headertank.calc.radiator;
