package headertank.calc.learning;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.evidence.DriveLog;
import headertank.calc.rating.Plant;
import headertank.calc.transients.LogReplay;
import headertank.calc.transients.LogStretches;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.util.FastMath;

/**
 * A log against a replay of it. What is left of a right car is the model's own error, which lasts ({@link Leftover}), of a size that the
 * log itself says ({@link Noise}). Unknowns of its own: the day, what its heat is over that of the car's other logs (5 %), the sensor beyond
 * what it is always off (0.3 K), where the radiator stood at a warm start, the breeze. All these are modelling choices.
 */
final class LogLikelihood implements Likelihood {

    static final int LOG_NUISANCES = 5;
    private static final double LOAD_SIGMA = 0.05;
    private static final double SENSOR_K = 0.3;
    private static final double RADIATOR_SIGMA = 0.3;
    private static final double BREEZE_SIGMA = 0.8;

    private final DrivenLog log;
    private final List<Integer> seen = new ArrayList<>();
    private final Leftover leftover;

    LogLikelihood(DriveLog log, Resolved car) {
        this.log = new DrivenLog(log, car);
        List<Double> readings = this.log.stretches().readings();
        for (int b = 0; b < readings.size(); b++) {
            if (!Double.isNaN(readings.get(b))) {
                seen.add(b);
            }
        }
        if (seen.isEmpty()) {
            throw new IllegalArgumentException(
                    "a log teaches nothing that shows no coolant for longer than ten seconds");
        }
        this.leftover = new Leftover(
                Noise.USUAL,
                seen.stream().mapToDouble(b -> LogStretches.BLOCK_S * b).toArray());
    }

    /** @return the day at these deviates, of which the first is that of the air */
    static LogReplay.Day day(double[] deviates) {
        return new LogReplay.Day(
                FastMath.exp(LOAD_SIGMA * deviates[1]),
                Math.max(0, Math.min(1, DrivenLog.USUAL.radiatorShare() + RADIATOR_SIGMA * deviates[3])),
                DrivenLog.USUAL.breezeMPerS() * FastMath.exp(BREEZE_SIGMA * deviates[4]));
    }

    @Override
    public int nuisances() {
        return LOG_NUISANCES + (log.duty().isPresent() ? 1 : 0);
    }

    @Override
    public double[] residuals(Candidate car, double[] nuisance) {
        Plant plant = car.plant(r -> r.with(BuildField.AMBIENT, log.ambientK(nuisance[0])));
        LogReplay.Answer answer = log.answer(plant, nuisance[0], day(nuisance));
        double[] ofDuty = log.duty()
                .map(d -> d.residuals(plant, answer.coolantW(), nuisance[LOG_NUISANCES]))
                .orElse(new double[0]);
        double[] residuals = new double[seen.size() + ofDuty.length];
        for (int i = 0; i < seen.size(); i++) {
            int b = seen.get(i);
            residuals[i] = log.stretches().readings().get(b) - answer.shownK()[b] - SENSOR_K * nuisance[2];
        }
        System.arraycopy(ofDuty, 0, residuals, seen.size(), ofDuty.length);
        return residuals;
    }

    @Override
    public Optional<Leftover> leftover() {
        return Optional.of(leftover);
    }
}
