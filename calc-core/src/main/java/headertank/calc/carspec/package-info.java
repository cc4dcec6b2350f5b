/** A car's cooling specification: its fields, the defaults of its class, the resolved values, the difference of two builds. */
package headertank.calc.carspec;
