package headertank.calc.published;

import java.util.Locale;
import java.util.function.DoubleSupplier;

/**
 * One comparison of a value of ours with a published one. The same row is a test and a line of
 * {@code docs/published-checks.md}.
 *
 * @param quantity what is compared
 * @param inputs at which inputs, with units
 * @param unit SI unit of both values
 * @param ours computes our value
 * @param published the published value
 * @param tolerance largest allowed difference, as a share of the published value when {@code relative}
 * @param relative whether the tolerance is a share
 * @param why why the tolerance is that wide
 * @param source author, work, year, place; or one of the marks {@code from memory}, {@code common practice, no source},
 *     {@code derived}
 * @param kind what agreement says
 */
public record Check(
        String quantity,
        String inputs,
        String unit,
        DoubleSupplier ours,
        double published,
        double tolerance,
        boolean relative,
        String why,
        String source,
        Kind kind) {

    /** What agreement in a row says. */
    public enum Kind {
        MEASURED("measured or printed", "measured, or computed and printed, by others"),
        SECOND_EVALUATION(
                "second evaluation", "the same formula evaluated elsewhere: that it was copied without a slip"),
        FIT_OF_TABLE("fit of its table", "a fit against the table that it was made from");

        private final String label;
        private final String says;

        Kind(String label, String says) {
            this.label = label;
            this.says = says;
        }

        String label() {
            return label;
        }

        String says() {
            return says;
        }
    }

    /** Starts a row; finish it with {@link Draft#source}. */
    public static Draft check(String quantity, String inputs, String unit) {
        return new Draft(quantity, inputs, unit, null, Double.NaN, Double.NaN, true, null);
    }

    /** @return the difference, as a share of the published value when the tolerance is one */
    public double difference() {
        double d = ours.getAsDouble() - published;
        return relative ? d / Math.abs(published) : d;
    }

    /** @return whether our value lies within the tolerance; never for NaN */
    public boolean holds() {
        return Math.abs(difference()) <= tolerance;
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%s at %s", quantity, inputs);
    }

    /** A row that is not finished. */
    public record Draft(
            String quantity,
            String inputs,
            String unit,
            DoubleSupplier ours,
            double published,
            double tolerance,
            boolean relative,
            String why) {

        public Draft ours(DoubleSupplier value) {
            return new Draft(quantity, inputs, unit, value, published, tolerance, relative, why);
        }

        public Draft published(double value) {
            return new Draft(quantity, inputs, unit, ours, value, tolerance, relative, why);
        }

        /** @param share allowed difference as a share of the published value */
        public Draft within(double share, String because) {
            return new Draft(quantity, inputs, unit, ours, published, share, true, because);
        }

        /** @param difference allowed difference in the row's unit */
        public Draft withinAbsolute(double difference, String because) {
            return new Draft(quantity, inputs, unit, ours, published, difference, false, because);
        }

        /** Finishes a row that compares with something measured or printed by others. */
        public Check source(String citation) {
            return of(Kind.MEASURED, citation);
        }

        /** Finishes a row that compares with the same formula, evaluated elsewhere. */
        public Check secondEvaluation(String citation) {
            return of(Kind.SECOND_EVALUATION, citation);
        }

        /** Finishes a row that compares a fit with the table that it was made from. */
        public Check fitOfTable(String citation) {
            return of(Kind.FIT_OF_TABLE, citation);
        }

        private Check of(Kind kind, String citation) {
            return new Check(quantity, inputs, unit, ours, published, tolerance, relative, why, citation, kind);
        }
    }
}
