package headertank.calc.learning;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.duty.Duty;
import headertank.calc.evidence.DriveLog;
import headertank.calc.fluid.Air;
import headertank.calc.rating.Plant;
import headertank.calc.transients.LogReplay;
import headertank.calc.transients.LogStretches;
import java.util.Optional;

/** A log ready to be driven again by cars, with the pieces of the duty that it drove. */
final class DrivenLog {

    /** Where the radiator is taken to stand at a warm start, from the air to the coolant [-]. */
    static final double RADIATOR_SHARE = 0.5;

    private final DriveLog log;
    private final LogStretches stretches;
    private final Optional<DrivenDuty> duty;

    /** @param car the car as it is expected */
    DrivenLog(DriveLog log, Resolved car) {
        this.log = log;
        this.stretches = new LogStretches(log);
        this.duty = log.drove().map(d -> find(d, Plant.of(car.with(BuildField.AMBIENT, ambientK(0)))));
    }

    private DrivenDuty find(Duty driven, Plant expected) {
        return new DrivenDuty(
                driven,
                stretches,
                expected,
                answer(expected, 0, 1, RADIATOR_SHARE).coolantW());
    }

    LogStretches stretches() {
        return stretches;
    }

    /** @return the duty that it drove, if somebody said so */
    Optional<DrivenDuty> duty() {
        return duty;
    }

    /** @return air around the car so many standard deviations off what the log says [K] */
    double ambientK(double deviate) {
        return Air.AMBIENT_K.clamp(log.ambientK() + log.ambientSigmaK() * deviate);
    }

    /**
     * @param plant a car in the air of the log's day
     * @param ambientDeviate how far off that is, in standard deviations
     * @param load what this log's heat is over that of the car's other logs [-]
     * @param radiatorShare where the radiator stands at a warm start, 0 at the air, 1 at the coolant [-]
     * @return what it would have shown and given
     */
    LogReplay.Answer answer(Plant plant, double ambientDeviate, double load, double radiatorShare) {
        return LogReplay.of(plant, stretches, ambientK(ambientDeviate), load, radiatorShare);
    }
}
