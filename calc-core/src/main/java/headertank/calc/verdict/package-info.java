/** Go, go with conditions, or no-go: margins with their uncertainty against a policy. */
package headertank.calc.verdict;
