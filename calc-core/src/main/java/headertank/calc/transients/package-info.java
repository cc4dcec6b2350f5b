/** A car over time: lumped masses through the phases of a schedule. */
package headertank.calc.transients;
