/** When the fans run: switches, steps and ramps over the sensed temperature. */
package headertank.calc.control;
