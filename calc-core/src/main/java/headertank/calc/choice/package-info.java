/** The options that somebody picks from when a car is described; models give each its figures. */
package headertank.calc.choice;
