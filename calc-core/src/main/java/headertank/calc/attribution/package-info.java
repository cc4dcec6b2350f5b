/** How many degrees each change of a build cost or gained. */
package headertank.calc.attribution;
