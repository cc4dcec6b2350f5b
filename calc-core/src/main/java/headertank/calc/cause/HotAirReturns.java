package headertank.calc.cause;

import headertank.calc.carspec.Resolved;
import headertank.calc.quantity.Message;
import headertank.calc.quantity.SiFigure;
import java.util.List;
import java.util.Optional;

/** Hot air of the core comes round to its front again: seals, ducts, a missing tray. */
public final class HotAirReturns implements CauseOfPractice {

    /** Slower than this what the core heats finds its way to the front [m/s]; modelling choice. */
    private static final double SLOW_M_PER_S = 8;

    @Override
    public String id() {
        return "hot-air-returns";
    }

    @Override
    public Message name() {
        return CauseText.HOT_AIR_RETURNS.with();
    }

    @Override
    public double prior(Resolved car, Sighting seen) {
        return seen.point().roadSpeedMPerS() < SLOW_M_PER_S ? 4 : 0.5;
    }

    @Override
    public Fault on(Fault car, double severity) {
        return car.inAir(hotterK(severity));
    }

    @Override
    public Optional<Message> amount(double severity) {
        return Optional.of(CauseText.HOT_AIR_RETURNS_AMOUNT.with(SiFigure.difference(hotterK(severity))));
    }

    @Override
    public List<Chance> signs() {
        return List.of(
                new Chance(Observation.COOLED_AT_SPEED, 0.70),
                new Chance(Observation.STARTED_AFTER_WORK, 0.60),
                new Chance(Observation.SEALS_GAPS, 0.85),
                new Chance(Observation.LOWER_HOSE_HOT, 0.70),
                new Chance(Observation.FORCED_FAN_STAYS_HOT, 0.60),
                new Chance(Observation.NEEDLE_CREPT, 0.75));
    }

    private static double hotterK(double severity) {
        return 5 + 20 * severity;
    }
}
