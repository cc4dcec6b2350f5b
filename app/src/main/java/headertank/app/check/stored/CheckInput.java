package headertank.app.check.stored;

import com.fasterxml.jackson.annotation.JsonFormat;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What went into a check, defaults included, as stored. Format 2. All numbers in SI.
 *
 * @param carClass class of car that chose the defaults
 * @param fields value of each field by its key
 * @param duties the duties as they were defined on that day
 * @param learned what was known of the car by its evidence; absent where none was used, and in a check of before evidence counted
 */
public record CheckInput(
        long revisionId,
        int revisionNumber,
        String calcCoreVersion,
        @JsonFormat(shape = JsonFormat.Shape.STRING) long seed,
        int samples,
        String carClass,
        SortedMap<String, Value> fields,
        List<RatedDuty> duties,
        Optional<LearnedFrom> learned) {

    /** Number of the format that is written today. */
    public static final int FORMAT = 2;

    public CheckInput {
        duties = List.copyOf(duties);
        fields = Collections.unmodifiableSortedMap(new TreeMap<>(fields));
        learned = learned == null ? Optional.empty() : learned;
    }

    /**
     * What evidence had taught when the car was rated. The whole of it, covariances too, is kept under {@code lesson}.
     *
     * @param lesson id of what was learned
     * @param lessonSha256 its hash, hexadecimal
     * @param used id@revision of each piece of evidence that was switched on, in their order
     * @param pieces the pieces that it was learned from
     * @param known how well the car was known by it
     * @param factors what it knew of the rated revision; nothing of parts that had changed since
     */
    public record LearnedFrom(
            long lesson,
            String lessonSha256,
            String used,
            List<LearnedPiece> pieces,
            String known,
            List<LearnedFactor> factors) {
        public LearnedFrom {
            pieces = List.copyOf(pieces);
            factors = List.copyOf(factors);
        }
    }

    /**
     * A piece of evidence.
     *
     * @param kind what it is
     * @param sha256 of what it says, hexadecimal
     */
    public record LearnedPiece(long id, String kind, String sha256) {}

    /**
     * What is known of a field or of a factor of the model.
     *
     * @param key of the field or factor
     * @param moved how far it moved, in standard deviations of what was known before [-]
     * @param left what is left of that standard deviation, as a share of it [-]
     */
    public record LearnedFactor(String key, double moved, double left) {}

    /**
     * A field as the rating used it.
     *
     * @param value the expected number [SI]; NaN for a choice or a number that stays unknown
     * @param stated the number as somebody stated it [SI]; NaN when nobody did
     * @param token the option, empty for a number
     * @param from where it comes from, {@code ASSUMED} when nobody stated it
     * @param spread how far a number may be off
     */
    public record Value(double value, double stated, String token, String from, Spread spread) {}

    /**
     * How far a number may be off.
     *
     * @param sigma one standard deviation, as a share of the value or in its SI unit
     * @param relative whether it is a share
     * @param meanFactor the expected value over the stated one [-]
     */
    public record Spread(double sigma, boolean relative, double meanFactor) {}

    /** A duty as it was defined on that day, see {@link headertank.calc.duty.Duty}. */
    public record RatedDuty(
            String id, String label, List<RatedPoint> points, Optional<Course> schedule, String source, String judged) {
        public RatedDuty {
            points = List.copyOf(points);
            schedule = schedule == null ? Optional.empty() : schedule;
        }
    }

    /** An operating point of a duty. */
    public record RatedPoint(
            String id,
            String label,
            double roadSpeedMPerS,
            double yawRad,
            double ambientOffsetK,
            Load demand,
            double loadSigma) {}

    /** What a point asks of the engine; what does not belong to its kind of load is absent, see {@link headertank.calc.duty.Demand}. */
    public record Load(
            Optional<Double> accessoriesW,
            Optional<Double> airConditioningW,
            Optional<Double> slope,
            Optional<Double> engineSpeedShare,
            Optional<Double> pumpRunOnShare,
            Optional<Boolean> fansRunOn,
            Optional<List<LoadMode>> modes) {}

    /** A share of time at one load and speed. */
    public record LoadMode(double timeShare, double powerShare, double speedShare) {}

    /** The points of a duty in the order in which they are driven. */
    public record Course(double startCoolantK, List<CoursePhase> phases) {
        public Course {
            phases = List.copyOf(phases);
        }
    }

    /** So many seconds at a point. */
    public record CoursePhase(String pointId, double seconds) {}
}
