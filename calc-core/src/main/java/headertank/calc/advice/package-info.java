/** Which change buys the most margin: candidate changes, each re-rated and ranked. */
package headertank.calc.advice;
