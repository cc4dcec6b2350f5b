/** How far a rating may be off: seeded stratified sampling of inputs and model factors. */
package headertank.calc.uncertainty;
