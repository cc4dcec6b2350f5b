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

    /** A day as any other: a radiator half warm at a warm start, a breeze of half a metre a second (modelling choices). */
    static final LogReplay.Day USUAL = new LogReplay.Day(1, 0.5, 0.5);

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
                driven, stretches, expected, answer(expected, 0, USUAL).coolantW());
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
     * @param day what else is not known of it
     * @return what it would have shown and given
     */
    LogReplay.Answer answer(Plant plant, double ambientDeviate, LogReplay.Day day) {
        return LogReplay.of(plant, stretches, ambientK(ambientDeviate), day);
    }
}
