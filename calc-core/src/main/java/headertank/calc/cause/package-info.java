/**
 * Why a car came back hot: a model for each cause ({@link headertank.calc.cause.Cause}), what can be asked
 * ({@link headertank.calc.cause.Inquiry}) and answered ({@link headertank.calc.cause.Observation}), and what follows
 * ({@link headertank.calc.cause.Ranking}).
 *
 * <p>A cause changes the car by a severity from 0 to 1, evenly spread; its size at either end is a modelling choice. How often it is behind
 * a car that comes back hot is common practice, no source, and so are the shares with which something is seen: no open count of
 * workshops is known to us that tells them. What the gauge, the lamp and steam would have shown is not stated but computed from the
 * car's own balance with the cause in it (package {@code diagnosis}). Answers to different questions are taken to be independent once the
 * cause is known, which is the naive Bayes of textbooks (D. Heckerman, J. S. Breese and K. Rommelse, Decision-theoretic troubleshooting,
 * 1995, from memory); no share is nearer to 0 or 1 than what a person may get wrong.
 *
 * <p>The next test is the one whose outcome is expected to lower the entropy of the ranking most for each of its minutes (D. V. Lindley,
 * On a measure of the information provided by an experiment, 1956, from memory; to divide it by the minutes is a modelling choice). Two
 * causes cannot be told apart where what was seen is less than the square root of ten likelier with one than with the other, which is
 * barely worth mentioning (H. Jeffreys, Theory of Probability, 1961, from memory): then only their priors order them.
 */
package headertank.calc.cause;
