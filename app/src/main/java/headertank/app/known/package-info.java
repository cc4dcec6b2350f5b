/**
 * How well a car is known: the pages of its evidence, a settled reading typed in one line, what was learned of it and what that does to its
 * margins, and what to find out next. What is kept is kept by {@code evidence}.
 */
package headertank.app.known;
