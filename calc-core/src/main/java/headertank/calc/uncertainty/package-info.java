/**
 * How far a rating may be off. Everything with a spread is sampled at once: each value of the car by its provenance, each model by
 * what its source leaves open ({@link headertank.calc.uncertainty.ModelSpread}), in a seeded Latin hypercube of standard normal
 * deviates, cut at three ({@link headertank.calc.uncertainty.LatinHypercube}, after M. D. McKay, R. J. Beckman, W. J. Conover,
 * Technometrics 21 (1979) 239-245, from memory). Values are log-normal or normal as their spread says, independent of one another;
 * each sampled car is a whole car that passes the same balance as the one it stands for
 * ({@link headertank.calc.uncertainty.Sampling}). What was learned of a car moves their means, narrows their spread and ties them to
 * one another. The samples run on all cores and keep their places, so that a rating repeats to
 * the last bit.
 */
package headertank.calc.uncertainty;
