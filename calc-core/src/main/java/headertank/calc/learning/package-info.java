/**
 * From evidence to what is known of a car ({@link headertank.calc.learning.Learning}).
 *
 * <p>Unknown are all values with a spread and all model factors, in standard deviations of what was known before: independent standard
 * normal deviates, as a rating samples them ({@link headertank.calc.uncertainty.Unknowns}). Each piece of evidence says what
 * was seen less what a car would have shown, over how far the reading may be off ({@code Likelihood}); it may have
 * unknowns of its own, which are estimated with the car's and then forgotten. The posterior is the normal distribution of Gauss-Newton at
 * the least of the sum of squares of residuals and unknowns (A. Tarantola, Inverse Problem Theory, 2005, chapter 3, from memory),
 * exact for a linear car ({@code Posterior}). A rating draws its samples from it.
 *
 * <p>The prior is the regularisation: what the evidence does not touch stays as it was. A car that would have to move all factors
 * together, or one of them, by more than 2.5 standard deviations is not the car that was seen, or has a fault
 * ({@link headertank.calc.carspec.Learned#isBeyondBelief}); what never ran hot says no normal distribution and weighs the samples of a
 * rating instead ({@code judged.Censored}).
 */
package headertank.calc.learning;
