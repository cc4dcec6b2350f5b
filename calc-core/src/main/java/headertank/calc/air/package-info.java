/**
 * The air through the radiator as one balance of pressures: ram pressure at the inlet less pressure at the exit drives it, fans
 * help or resist; inlet, tilt, core and exit take it ({@link headertank.calc.air.AirPath} has the equation).
 *
 * <p>Core under the shroud and bare core beside it are two ways in parallel; the bare one may flow backwards when the car stands,
 * unless flaps shut it, and what flows back is drawn in again, hot ({@link headertank.calc.air.Recirculation}). The balance has one
 * root in the flow under the shroud ({@link headertank.calc.air.AirBalance}).
 *
 * <p>A fan is a parabola from its shut-off pressure to its free flow that moves with speed by the fan laws, and a resistance on its
 * annulus beyond free delivery ({@link headertank.calc.air.Fan}); what nobody stated of it follows from its electric power
 * ({@link headertank.calc.air.FanFit}), and {@link headertank.calc.air.FanClaim} tells a claim that no such power can give. A fan on
 * the engine turns with it through a viscous clutch that feels the air behind the core ({@link headertank.calc.air.ClutchFan}).
 *
 * <p>Pressure and loss coefficients of a body nobody has measured are guessed, and stand in one place with their marks:
 * {@link headertank.calc.air.TypicalAirPath}. They are the least known numbers of a rating and its spread says so.
 */
package headertank.calc.air;
