/** The coupled balance: where heat, air, coolant and current meet, and the margins that follow. */
package headertank.calc.rating;
