/**
 * Risky choices that a shop should hear about, whatever the margins are: one class for each rule
 * ({@link headertank.calc.risk.RiskRule}). A rule sees the car as it is and may ask what it would be with one thing changed
 * ({@link headertank.calc.risk.RiskContext}), so that a flag says what the choice costs this car, not cars in general. A flag names
 * its consequences with figures, what to do, the caution that belongs to it, and its source; where the trade says otherwise, it says
 * that too. A rule that throws is named in the rating and the rest goes on.
 */
package headertank.calc.risk;
