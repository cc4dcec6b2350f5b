package headertank.calc.cause;

import headertank.calc.choice.SensorPlacement;
import headertank.calc.duty.Duty;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What was seen of a car that came back hot, from words alone to words and one reading, and what tests have shown since.
 *
 * @param duty what it was out for
 * @param pointId what it was doing: one of the duty's operating points with the engine on
 * @param ambientK air around the car that day, 233 to 328; empty when nobody knows [K]
 * @param shownK what its gauge showed, 273 to 433; empty when nobody looked [K]
 * @param elsewhere where the sensor of that gauge sits when it is not that of the car's
 * @param observed answers, at most one to each question
 */
public record Sighting(
        Duty duty,
        String pointId,
        OptionalDouble ambientK,
        OptionalDouble shownK,
        Optional<SensorPlacement> elsewhere,
        Set<Observation> observed) {

    /** Readings of a gauge that tell how hot a car was [K]. */
    public static final Range SHOWN_K = Range.of(273.15, 433.15);

    public Sighting {
        ambientK.ifPresent(k -> OutOfRangeException.require("seen.ambientK", k, 233.15, 328.15));
        shownK.ifPresent(k -> OutOfRangeException.require("seen.shownK", k, SHOWN_K));
        if (duty.point(pointId).engineOff()) {
            throw new IllegalArgumentException("a car runs hot with its engine on, not at " + pointId);
        }
        Set<Inquiry> asked = new HashSet<>();
        for (Observation o : observed) {
            if (!asked.add(o.inquiry())) {
                throw new IllegalArgumentException(o.inquiry() + " has two answers");
            }
        }
        Set<Observation> ordered = EnumSet.noneOf(Observation.class);
        ordered.addAll(observed);
        observed = Collections.unmodifiableSet(ordered);
    }

    /** @return what the car was doing */
    public OperatingPoint point() {
        return duty.point(pointId);
    }

    /** @return whether a question has an answer */
    public boolean answers(Inquiry question) {
        return observed.stream().anyMatch(o -> o.inquiry() == question);
    }
}
