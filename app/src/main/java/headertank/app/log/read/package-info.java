/**
 * What the columns of a log mean: guesses with their reasons, the choice that somebody made of them, and the rows in SI units,
 * one at a time in constant memory.
 */
package headertank.app.log.read;
