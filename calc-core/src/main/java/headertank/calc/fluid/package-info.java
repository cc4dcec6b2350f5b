/**
 * Air, water, coolants, engine oil and fuels.
 *
 * <p>Air is an ideal gas with viscosity and conductivity of the standard atmosphere (ISO 2533:1975; constants from memory);
 * humidity enters its density only ({@link headertank.calc.fluid.Air}, {@link headertank.calc.fluid.Atmosphere}). Water has the
 * saturation line of IAPWS R7-97(2012) and fitted properties of the liquid ({@link headertank.calc.fluid.WaterProperties}).
 *
 * <p>Coolants are mixtures of water with ethylene or propylene glycol by the ASHRAE tables ({@link headertank.calc.fluid.AshraeCoolant}) or
 * Melinder's polynomials ({@link headertank.calc.fluid.MelinderCoolant}); {@link headertank.calc.fluid.GlycolMixture} says how
 * they go on above 100 C, where the tables end, and what is tested there. A {@link headertank.calc.fluid.Coolant} answers at any
 * temperature of 233 to 473 K without a throw and without a jump, because a root search runs over it; what lies beyond a source is
 * said in notes, and {@link headertank.calc.fluid.CoolantSpread} says how well the properties are known.
 *
 * <p>{@link headertank.calc.fluid.Fuel} holds what a fuel does to the heat in the coolant: gas temperature, evaporation and mass
 * flow against petrol with 10 % ethanol.
 */
package headertank.calc.fluid;
