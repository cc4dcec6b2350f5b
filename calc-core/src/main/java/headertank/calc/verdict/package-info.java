/**
 * From margins and probabilities to go, conditions, no-go. A {@link headertank.calc.verdict.VerdictPolicy} finds reasons, each with
 * the best verdict that it allows; the worst of them is the verdict. The usual policy and its thresholds
 * ({@link headertank.calc.verdict.StandardPolicy}, {@link headertank.calc.verdict.Threshold}) are no physics: the boiling margin of
 * 10 K and 5 K is common practice, no source, and the probabilities that are accepted are a policy. A shop may be stricter where a
 * usual value is common practice, and choose its risk in both directions.
 */
package headertank.calc.verdict;
