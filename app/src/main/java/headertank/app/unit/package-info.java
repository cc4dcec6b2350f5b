/** The only place where text with a unit becomes a number in SI, and back. */
package headertank.app.unit;
