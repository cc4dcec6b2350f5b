/**
 * What a rating hands back: records of figures with their units, without a model among them, so that they can be read, stored and
 * drawn without knowing how they came about. A {@link headertank.calc.result.PointRating} is one operating point: its
 * {@link headertank.calc.result.Balance}, or why it has none, and the {@link headertank.calc.result.Figures} of the field; a
 * {@link headertank.calc.result.RunResult} is a schedule driven; the rest answers questions about a rated car.
 */
package headertank.calc.result;
