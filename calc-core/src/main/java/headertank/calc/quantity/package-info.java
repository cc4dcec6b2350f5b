/** What every other package speaks: stated values with their provenance and spread, allowed ranges, notes and typed problems. */
package headertank.calc.quantity;
