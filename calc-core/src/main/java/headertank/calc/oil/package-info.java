/** Where the oil's temperature settles between its heat, the coolant and the air. */
package headertank.calc.oil;
