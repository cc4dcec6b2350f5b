/**
 * The options that somebody picks from when a car is described; the models give each its figures. An option is a type of its
 * own, so that a pump's drive is never compared with a fan's by its spelling: {@code carspec.BuildField} names the type of each
 * choice, and refuses an option of another. The names of the constants are the tokens that are stored and written to files; they
 * never change.
 */
package headertank.calc.choice;
