/** Choices that the trade knows as risky, one small class each, with what they cost this car. */
package headertank.calc.risk;
