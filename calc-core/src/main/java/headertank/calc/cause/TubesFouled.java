package headertank.calc.cause;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.quantity.FigureKind;
import headertank.calc.quantity.Message;
import headertank.calc.quantity.SiFigure;
import java.util.List;
import java.util.Optional;

/** Deposits in the tubes. */
public final class TubesFouled implements CauseOfPractice {

    @Override
    public String id() {
        return "tubes-fouled";
    }

    @Override
    public Message name() {
        return CauseText.TUBES_FOULED.with();
    }

    @Override
    public double prior(Resolved car, Sighting seen) {
        return 5;
    }

    @Override
    public Fault on(Fault car, double severity) {
        return car.set(BuildField.CORE_FOULING, deposits(severity));
    }

    @Override
    public Optional<Message> amount(double severity) {
        return Optional.of(CauseText.TUBES_FOULED_AMOUNT.with(new SiFigure(deposits(severity), FigureKind.FOULING)));
    }

    @Override
    public List<Chance> signs() {
        return List.of(
                new Chance(Observation.COOLED_AT_REST, 0.75),
                new Chance(Observation.STARTED_OVER_WEEKS, 0.80),
                new Chance(Observation.CORE_FACE_PATCHY, 0.75),
                new Chance(Observation.TANK_FLOW_WEAK, 0.30),
                new Chance(Observation.LOWER_HOSE_WARM, 0.55),
                new Chance(Observation.FORCED_FAN_STAYS_HOT, 0.70),
                new Chance(Observation.NEEDLE_CREPT, 0.80));
    }

    private static double deposits(double severity) {
        return 1e-4 + 5e-4 * severity;
    }
}
