/**
 * Air through the radiator as one balance: ram pressure, inlet and duct, core, fans with their shroud, bare core beside
 * the shroud, exit, tilt, sideslip and recirculation.
 */
package headertank.calc.air;
