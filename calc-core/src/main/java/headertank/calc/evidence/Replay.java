package headertank.calc.evidence;

import java.util.List;

/**
 * A log beside what the car would have shown on its own inputs.
 *
 * @param moments means of ten seconds, in their order
 */
public record Replay(List<Moment> moments) {

    /**
     * Ten seconds.
     *
     * @param timeS when they begin, as the log counts [s]
     * @param readK what the sensor showed, no number where nothing was read or the log has a gap [K]
     * @param expectedK what it would have shown [K]
     */
    public record Moment(double timeS, double readK, double expectedK) {

        /** @return reading less what was expected [K] */
        public double residualK() {
            return readK - expectedK;
        }
    }

    public Replay {
        moments = List.copyOf(moments);
    }

    /** @return root of the mean square of what is left where something was read [K] */
    public double rootMeanSquareK() {
        return Math.sqrt(moments.stream()
                .mapToDouble(Moment::residualK)
                .filter(d -> !Double.isNaN(d))
                .map(d -> d * d)
                .average()
                .orElse(Double.NaN));
    }
}
