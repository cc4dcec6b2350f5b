/**
 * One car at one operating point.
 *
 * <p>{@link headertank.calc.rating.Plant} makes the models from the resolved values. {@link headertank.calc.rating.PointLoad} says
 * what the point asks: heat of the engine, coolers in front of the core, sideslip. {@link headertank.calc.rating.SteadySolver} finds
 * the coolant temperature at which heat, air, coolant and current balance: a trial temperature gives the thermostat's lift and the
 * coolant's flows; then fan duty, air flow, radiator heat and recirculation are brought to agree; then the oil's node; what is left
 * of the heat rises with the temperature, so that one bracketed root is enough (derived). Cars whose fans follow the air behind the
 * core may have two states at one temperature; then the fans' drive is the outer unknown.
 *
 * <p>The same function with the coolant held and the ambient as the unknown gives the hottest day on which the car still holds, in
 * the sense of SAE J1393 ({@link headertank.calc.rating.PointRater}). Balances whose demand passes the engine's power, or whose heat
 * passes what the radiator can give at the hottest temperature tried, say so and have no figures.
 *
 * <p>{@link headertank.calc.rating.PointWorking} writes the way from fuel to margins down, line by line with symbol and source;
 * {@link headertank.calc.rating.ModelFactors} are the plain factors that a sampled car's models are made with. They stand here,
 * below the sampling, because {@code Plant} applies them; how far each may be off is none of its business and stands in
 * {@code uncertainty}.
 */
package headertank.calc.rating;
