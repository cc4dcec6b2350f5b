/** What a temperature sensor reads, from where it sits: offset, lag, and what it shows when the flow stops. */
package headertank.calc.sensor;
