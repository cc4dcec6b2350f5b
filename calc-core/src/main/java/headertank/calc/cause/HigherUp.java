package headertank.calc.cause;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.quantity.FigureKind;
import headertank.calc.quantity.Message;
import headertank.calc.quantity.SiFigure;
import java.util.List;
import java.util.Optional;

/** It was higher up than what was agreed: thinner air. */
public final class HigherUp implements CauseOfPractice {

    @Override
    public String id() {
        return "higher-up";
    }

    @Override
    public Message name() {
        return CauseText.HIGHER_UP.with();
    }

    @Override
    public double prior(Resolved car, Sighting seen) {
        return 2;
    }

    @Override
    public Fault on(Fault car, double severity) {
        return car.moved(BuildField.ALTITUDE, higherM(severity));
    }

    @Override
    public Optional<Message> amount(double severity) {
        return Optional.of(CauseText.HIGHER_UP_AMOUNT.with(new SiFigure(higherM(severity), FigureKind.ALTITUDE)));
    }

    @Override
    public List<Chance> signs() {
        return List.of(
                new Chance(Observation.COOLED_AT_REST, 0.65),
                new Chance(Observation.STARTED_AT_ONCE, 0.90),
                new Chance(Observation.DAY_HIGHER, 0.93),
                new Chance(Observation.LOWER_HOSE_HOT, 0.60),
                new Chance(Observation.NEEDLE_CREPT, 0.75));
    }

    private static double higherM(double severity) {
        return 500 + 2000 * severity;
    }
}
