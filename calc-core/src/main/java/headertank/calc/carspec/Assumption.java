package headertank.calc.carspec;

import headertank.calc.quantity.Spread;

/**
 * A value that nobody stated and that a rating had to assume.
 *
 * @param field which field
 * @param value the assumed number in SI, NaN for a choice
 * @param token the assumed option, empty for a number
 * @param spread how far the assumed number may be off
 * @param why what the value rests on
 */
public record Assumption(BuildField field, double value, String token, Spread spread, AssumptionText why) {}
