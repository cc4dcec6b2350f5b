package headertank.calc.quantity;

/**
 * One line of a result's working.
 *
 * @param quantity what it is
 * @param symbol its symbol in the formulas
 * @param unit its SI unit, {@code -} for a pure number
 * @param value its value
 * @param source the formula's or figure's source: author, work and year, or one of the marks {@code from memory},
 *     {@code common practice, no source}, {@code derived}, {@code modelling choice}
 */
public record WorkingLine(WorkedQuantity quantity, String symbol, String unit, double value, String source) {

    /** A negative zero becomes a plain one: no text format tells the two apart. */
    public WorkingLine {
        value += 0.0;
    }
}
