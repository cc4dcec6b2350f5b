package headertank.calc.learning;

import headertank.calc.carspec.BuildField;
import headertank.calc.evidence.SettledReading;
import headertank.calc.rating.Plant;
import headertank.calc.rating.SteadySolver;
import headertank.calc.result.Balance;
import headertank.calc.sensor.SensorReading;

/** The gauge in the steady state of a point, on a day of which the air is known. */
record SettledLikelihood(SettledReading seen) implements Likelihood {

    @Override
    public double[] residuals(Candidate car, double[] nuisance) {
        Plant plant = car.plant(r -> r.with(BuildField.AMBIENT, seen.ambientK()));
        if (!(new SteadySolver(plant, seen.point()).solve() instanceof Balance.Steady s)) {
            return null;
        }
        double shown = SensorReading.steadyK(
                        seen.elsewhere().orElse(plant.gaugeSensor()),
                        s.engineOutK(),
                        s.coolant().radiatorOutK(),
                        s.ambientK(),
                        s.coolant().radiatorM3PerS())
                + (seen.elsewhere().isPresent() ? 0 : plant.factors().gaugeOffsetK());
        return new double[] {(seen.shownK() - shown) / seen.sigmaK()};
    }
}
