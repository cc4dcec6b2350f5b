/** Alternator, fan current and what a battery must add: amperes, volts and the fan speed that is left. */
package headertank.calc.electric;
