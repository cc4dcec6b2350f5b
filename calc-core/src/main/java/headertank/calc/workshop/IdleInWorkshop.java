package headertank.calc.workshop;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.rating.Plant;
import headertank.calc.rating.PointRater;
import headertank.calc.result.Distribution;
import headertank.calc.result.IdleExpectation;
import headertank.calc.result.IdleExpectation.Figure;
import headertank.calc.transients.IdleWarmUp;
import headertank.calc.uncertainty.ModelSpread;
import headertank.calc.uncertainty.Sampling;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Samples a car that idles in the workshop, see {@link IdleWarmUp}. */
public final class IdleInWorkshop {

    private IdleInWorkshop() {}

    /**
     * How far a reading with a workshop's means may be off; modelling choices: 30 s on a watch, 10 s between
     * two marks of the gauge, 5 % of how fast it rises, 3 K on a gauge, 5 % and at least 1 A on a clamp meter, 2 K between two contact thermometers, 0.5 V with the regulator's own spread.
     *
     * @return one side of the widening, in the figure's SI unit
     */
    public static double readingAllowance(Figure figure, double expected) {
        return switch (figure) {
            case FROM_40_TO_80_S -> 10;
            case HOT_RISE_K_PER_S -> 0.05 * expected;
            case THERMOSTAT_OPENS_S, FANS_START_S -> 30;
            case GAUGE_AT_FAN_START_K -> 3;
            case FAN_START_A, FAN_RUNNING_A -> Math.max(1, 0.05 * expected);
            case CORE_DROP_K -> 2;
            case VOLTAGE_V -> 0.5;
        };
    }

    /**
     * @param asDriven the car in the workshop's air
     * @param samples number of sampled cars
     * @param seed seed of the samples
     * @return what to read off it
     */
    public static IdleExpectation of(Resolved asDriven, int samples, long seed) {
        Resolved car = IdleWarmUp.nothingSwitchedOn(asDriven);
        Plant plant = Plant.of(car);
        ModelSpread spread = ModelSpread.of(car, PointRater.rate(plant, IdleWarmUp.point(car)));
        List<IdleWarmUp> sampled =
                new Sampling(car, samples, seed).each(sampledCar -> IdleWarmUp.of(sampledCar.at(spread)));
        Map<Figure, IdleExpectation.Band> bands = new EnumMap<>(Figure.class);
        IdleWarmUp.of(plant).figures().forEach((f, expected) -> bands.put(f, band(f, expected, sampled)));
        return new IdleExpectation(car.value(BuildField.AMBIENT), bands, sampled.size());
    }

    private static IdleExpectation.Band band(Figure figure, double expected, List<IdleWarmUp> sampled) {
        boolean isTime =
                switch (figure) {
                    case FROM_40_TO_80_S, THERMOSTAT_OPENS_S, FANS_START_S -> true;
                    default -> false;
                };
        double[] reached = sampled.stream()
                .map(s -> s.figure(figure))
                .filter(v -> isTime || v.isPresent())
                .mapToDouble(v -> v.orElse(Double.POSITIVE_INFINITY))
                .toArray();
        double allowance = readingAllowance(figure, expected);
        if (reached.length == 0) {
            return new IdleExpectation.Band(expected, expected - allowance, expected + allowance);
        }
        Distribution spread = Distribution.of(reached);
        return new IdleExpectation.Band(expected, spread.low() - allowance, spread.high() + allowance);
    }
}
