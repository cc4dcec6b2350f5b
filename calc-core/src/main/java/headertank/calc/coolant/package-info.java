/**
 * The coolant circuit: pump, thermostat, bypass and hoses solved for both branch flows, and the pressure side of it: cap,
 * boiling margin, pump inlet, head wall, expansion and air in the system.
 */
package headertank.calc.coolant;
