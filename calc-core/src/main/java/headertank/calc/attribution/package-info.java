/**
 * Which change cost how many degrees. Changes do not add: a larger fan buys little on a core that it fully feeds already. The fair
 * share of each is its mean effect over all orders in which the changes could have been made (L. S. Shapley, 1953, from memory;
 * {@link headertank.calc.attribution.Shapley}): exact for few changes, from sampled orders and their reverses for many. The shares
 * sum to the whole difference ({@link headertank.calc.attribution.Shares}).
 */
package headertank.calc.attribution;
