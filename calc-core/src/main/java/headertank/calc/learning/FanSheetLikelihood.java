package headertank.calc.learning;

import headertank.calc.air.Fan;
import headertank.calc.carspec.BuildField;
import headertank.calc.evidence.FanSheet;
import headertank.calc.rating.Plant;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.hipparchus.util.FastMath;

/**
 * One electric fan on its maker's sheet or on a bench: its rise at each flow, and its current against the voltage squared, as the
 * electric balance takes it.
 */
record FanSheetLikelihood(FanSheet sheet) implements Likelihood {

    @Override
    public double[] residuals(Candidate car, double[] nuisance) {
        Plant plant = car.plant(UnaryOperator.identity());
        Fan fan = plant.fan();
        if (fan == null || plant.clutch() != null) {
            throw new IllegalArgumentException("a sheet of an electric fan says nothing of a car without one");
        }
        double current = plant.resolved().value(BuildField.FAN_CURRENT);
        return sheet.points().stream()
                .flatMapToDouble(p -> {
                    double speed = p.voltageV() / Fan.REFERENCE_V;
                    double rise = fan.risePa(fan.count() * p.flowM3PerS(), sheet.airKgPerM3(), speed);
                    double off = (p.risePa() - rise) / (sheet.sigmaShare() * sheet.highestPa());
                    return Double.isNaN(p.currentA())
                            ? IntStream.of(1).mapToDouble(i -> off)
                            : IntStream.of(0, 1)
                                    .mapToDouble(i -> i == 0
                                            ? off
                                            : FastMath.log(p.currentA() / (current * speed * speed))
                                                    / sheet.sigmaShare());
                })
                .toArray();
    }
}
