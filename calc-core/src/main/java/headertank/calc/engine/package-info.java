/** From the engine's fuel to the heat that its coolant and oil must lose: energy balance, duty as modes, idle, overrun. */
package headertank.calc.engine;
