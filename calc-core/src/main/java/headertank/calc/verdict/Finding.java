package headertank.calc.verdict;

import headertank.calc.quantity.Message;
import headertank.calc.quantity.SiFigure;

/**
 * One thing that a verdict rests on.
 *
 * @param code stable name, for translation and tests
 * @param verdict the best verdict that this finding allows
 * @param figure what it rests on
 * @param text what to tell the reader
 * @param doThis what to do about it, empty when nothing
 */
public record Finding(Code code, Verdict verdict, SiFigure figure, Message text, Message doThis) {

    /** The kinds of finding. */
    public enum Code {
        COOLANT_MARGIN,
        COOLANT_PROBABILITY,
        OIL_MARGIN,
        BOILING_MARGIN,
        NO_STEADY_STATE,
        OUTSIDE_SOURCE_RANGE,
        ALTERNATOR,
        PUMP_INLET,
        COOLANT_RISE,
        RISK_FLAG
    }
}
