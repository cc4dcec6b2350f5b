/**
 * The coolant's round, and the pressure it stands under.
 *
 * <p>Pump and engine block lie in series with two branches in parallel: hoses, thermostat and radiator, or the bypass
 * ({@link headertank.calc.coolant.CoolantCircuit} has the equation and why it has one root). The pump is a parabola that moves with
 * speed by the affinity laws ({@link headertank.calc.coolant.CoolantPump}); resistances are multiples of its own
 * ({@link headertank.calc.coolant.CircuitSpec}), guessed until a flow is measured. The thermostat's lift rises in a straight line
 * between two temperatures and leaks when shut ({@link headertank.calc.coolant.Thermostat}).
 *
 * <p>The pressure side: the cap holds its gauge pressure above the atmosphere where it sits
 * ({@link headertank.calc.coolant.PressureCap}); how far the bulk stays below boiling
 * ({@link headertank.calc.coolant.BoilingMargin}); what is left at the pump's inlet
 * ({@link headertank.calc.coolant.PumpInlet}); the head's wall, which boils locally in any engine at full load
 * ({@link headertank.calc.coolant.HeadWall}, by the relation of Dittus and Boelter, from memory).
 */
package headertank.calc.coolant;
