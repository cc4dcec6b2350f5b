package headertank.calc.diagnosis;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.cause.Cause;
import headertank.calc.cause.Fault;
import headertank.calc.cause.Sighting;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.engine.EngineFactors;
import headertank.calc.judged.DutyRater;
import headertank.calc.rating.ModelFactors;
import headertank.calc.rating.Plant;
import headertank.calc.rating.PointRater;
import headertank.calc.rating.SteadySolver;
import headertank.calc.result.Balance;
import headertank.calc.sensor.SensorReading;
import headertank.calc.uncertainty.ModelSpread;
import headertank.calc.uncertainty.Sampling;
import java.util.ArrayList;
import java.util.List;

/**
 * How hot a car gets with a cause, over what is not known of it and over the cause's severity: sampled cars, each at the three points of
 * Gauss and Legendre between the ends of the severity.
 *
 * <p>At a point where the car idles, and in a duty without a schedule, it gets as hot as its steady state. A load that ends before that
 * leaves it on the way: as far as the run of the sound car says (derived).
 */
final class HeatStates {

    /** Points of the severity and their weights, exact for polynomials of the fifth degree. */
    static final double[] SEVERITIES = {0.5 - 0.5 * Math.sqrt(0.6), 0.5, 0.5 + 0.5 * Math.sqrt(0.6)};

    static final double[] WEIGHTS = {5.0 / 18, 8.0 / 18, 5.0 / 18};

    /** Least way towards the steady state that a load is taken to go [-]; modelling choice. */
    private static final double LEAST_REACH = 0.15;

    private final Sampling sampling;
    private final ModelSpread spread;
    private final Sighting seen;
    private final double startK;
    private final double reach;

    /**
     * @param car the car on that day
     * @param seen what it did
     * @param samples cars that it may be
     */
    HeatStates(Resolved car, Sighting seen, int samples, long seed) {
        this.seen = seen;
        Plant sound = Plant.of(car);
        this.spread = ModelSpread.of(car, PointRater.rate(sound, seen.point()));
        this.sampling = new Sampling(car, samples, seed);
        double limit = car.value(BuildField.COOLANT_LIMIT);
        boolean settles = seen.duty().schedule().isEmpty() || seen.point().idles();
        double peak = settles ? Double.NaN : limit - DutyRater.finiteMarginK(sound, seen.duty());
        double steady = settles ? Double.NaN : steadyK(new SteadySolver(sound, seen.point()).solve());
        if (settles || steady <= peak) {
            this.startK = steady;
            this.reach = 1;
        } else {
            this.startK =
                    Math.min(peak - 1, seen.duty().schedule().orElseThrow().startCoolantK());
            this.reach = Math.max(LEAST_REACH, Math.min(1, (peak - startK) / (steady - startK)));
        }
    }

    /**
     * @return how hot it gets: for each severity the sampled cars, those that a model does not accept left out; none at all where it
     *     accepts no car
     */
    List<List<Heat>> of(Cause cause) {
        List<List<Heat>> all = new ArrayList<>();
        for (double severity : SEVERITIES) {
            all.add(sampling.each(sampled -> heat(sampled, cause, severity)));
        }
        return all;
    }

    private Heat heat(Sampling.SampledCar sampled, Cause cause, double severity) {
        Fault[] fault = new Fault[1];
        Plant changed = sampled.changed(
                r -> {
                    fault[0] = cause.on(Fault.none(r), severity);
                    return fault[0].car();
                },
                spread);
        Plant plant = fault[0].heat() == 1
                ? changed
                : Plant.of(changed.resolved(), heated(changed.factors(), fault[0].heat()));
        Balance balance = new SteadySolver(plant, inAir(seen.point(), fault[0].airInK())).solve();
        double steady = steadyK(balance);
        double reached = reach == 1 ? steady : startK + reach * (steady - startK);
        double sensor = balance instanceof Balance.Steady s
                ? SensorReading.steadyK(
                                seen.elsewhere().orElse(plant.gaugeSensor()),
                                s.engineOutK(),
                                s.coolant().radiatorOutK(),
                                s.ambientK(),
                                s.coolant().radiatorM3PerS())
                        - s.engineOutK()
                : 0;
        double gauge = seen.elsewhere().isPresent() ? 0 : plant.factors().gaugeOffsetK() + fault[0].gaugeK();
        return new Heat(reached + sensor + gauge, reached, plant.boilingK() + fault[0].boilingK());
    }

    private static double steadyK(Balance balance) {
        return balance instanceof Balance.Steady s ? s.engineOutK() : SteadySolver.HOTTEST_K;
    }

    private static OperatingPoint inAir(OperatingPoint p, double hotterK) {
        return hotterK == 0
                ? p
                : new OperatingPoint(
                        p.id(),
                        p.label(),
                        p.roadSpeedMPerS(),
                        p.yawRad(),
                        p.ambientOffsetK() + hotterK,
                        p.demand(),
                        p.loadSigma());
    }

    private static ModelFactors heated(ModelFactors f, double heat) {
        EngineFactors e = f.engine();
        return new ModelFactors(
                f.radiator(),
                new EngineFactors(e.coolantShare() * heat, e.friction(), e.fuelHeat(), e.loadExponent()),
                f.air(),
                f.liquid(),
                f.demand(),
                f.metal(),
                f.gaugeOffsetK());
    }
}
