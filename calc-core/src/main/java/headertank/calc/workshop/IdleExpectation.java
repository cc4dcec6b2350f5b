package headertank.calc.workshop;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.rating.Plant;
import headertank.calc.rating.PointRater;
import headertank.calc.transients.IdleWarmUp;
import headertank.calc.transients.IdleWarmUp.Figure;
import headertank.calc.uncertainty.Distribution;
import headertank.calc.uncertainty.ModelSpread;
import headertank.calc.uncertainty.Sampling;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What a technician should read off a car that idles in the workshop, and how far a reading may be from that before it says
 * something: 5 to 95 % of sampled cars, widened by what a reading in a workshop is good for.
 *
 * @param ambientK air in the workshop [K]
 * @param bands by figure; a figure that the car does not have, or does not reach within the hour, is absent
 * @param samples number of sampled cars
 */
public record IdleExpectation(double ambientK, Map<Figure, Band> bands, int samples) {

    /**
     * What is expected of one figure, in its SI unit.
     *
     * @param expected from the models as published
     * @param low smallest reading that is as expected
     * @param high largest reading that is as expected; infinite for a time that many sampled cars do not reach
     */
    public record Band(double expected, double low, double high) {
        public Band {
            low = Math.min(low, expected);
            high = Math.max(high, expected);
        }
    }

    public IdleExpectation {
        Map<Figure, Band> copy = new EnumMap<>(Figure.class);
        copy.putAll(bands);
        bands = Collections.unmodifiableMap(copy);
    }

    /**
     * How far a reading with a workshop's means may be off; modelling choices: 30 s on a watch, 3 K on a gauge, 5 % and at
     * least 1 A on a clamp meter, 2 K between two contact thermometers, 0.5 V with the regulator's own spread.
     *
     * @return one side of the widening, in the figure's SI unit
     */
    static double readingAllowance(Figure figure, double expected) {
        return switch (figure) {
            case THERMOSTAT_OPENS_S, FANS_START_S -> 30;
            case GAUGE_AT_FAN_START_K -> 3;
            case FAN_START_A, FAN_RUNNING_A -> Math.max(1, 0.05 * expected);
            case CORE_DROP_K -> 2;
            case VOLTAGE_V -> 0.5;
        };
    }

    /**
     * @param car the car in the workshop's air
     * @param samples number of sampled cars
     * @param seed seed of the samples
     * @return what to read off it
     */
    public static IdleExpectation of(Resolved car, int samples, long seed) {
        Plant plant = Plant.of(car);
        ModelSpread spread = ModelSpread.of(car, PointRater.rate(plant, IdleWarmUp.POINT));
        List<IdleWarmUp> sampled =
                new Sampling(car, samples, seed).each(sampledCar -> IdleWarmUp.of(sampledCar.at(spread)));
        Map<Figure, Band> bands = new EnumMap<>(Figure.class);
        IdleWarmUp.of(plant).figures().forEach((f, expected) -> bands.put(f, band(f, expected, sampled)));
        return new IdleExpectation(car.value(BuildField.AMBIENT), bands, sampled.size());
    }

    private static Band band(Figure figure, double expected, List<IdleWarmUp> sampled) {
        boolean isTime = figure == Figure.THERMOSTAT_OPENS_S || figure == Figure.FANS_START_S;
        double[] reached = sampled.stream()
                .map(s -> s.figure(figure))
                .filter(v -> isTime || v.isPresent())
                .mapToDouble(v -> v.orElse(Double.POSITIVE_INFINITY))
                .toArray();
        double allowance = readingAllowance(figure, expected);
        if (reached.length == 0) {
            return new Band(expected, expected - allowance, expected + allowance);
        }
        Distribution spread = Distribution.of(reached);
        return new Band(expected, spread.low() - allowance, spread.high() + allowance);
    }
}
