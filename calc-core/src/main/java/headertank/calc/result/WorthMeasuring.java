package headertank.calc.result;

import headertank.calc.carspec.BuildField;

/**
 * A number that somebody guessed or nobody stated, and what not knowing it costs.
 *
 * @param field the number's field
 * @param guessed whether somebody guessed it; else it was assumed
 * @param marginK one standard deviation of the coolant margin that it causes [K]
 */
public record WorthMeasuring(BuildField field, boolean guessed, double marginK) {}
