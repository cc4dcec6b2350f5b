/** The same schedule with one thing changed or broken: fan control, sensor, set point, fuse. */
package headertank.calc.whatif;
