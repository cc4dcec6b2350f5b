package headertank.app.handover.item;

import headertank.app.unit.Dimension;
import headertank.calc.quantity.Range;
import headertank.calc.result.IdleExpectation.Figure;
import java.util.Optional;

/** What is measured at an item, and which readings can be meant at all (modelling choices, SI). */
public enum MeasuredQuantity {
    CAP_OPENS(Dimension.PRESSURE_GAUGE, Dimension.PRESSURE_GAUGE, Range.of(0, 5e5), null),
    PRESSURE_HELD(Dimension.PRESSURE_GAUGE, Dimension.PRESSURE_GAUGE, Range.of(0, 5e5), null),
    THERMOSTAT_OPENS(Dimension.DURATION, Dimension.DURATION, Range.of(10, 14400), Figure.THERMOSTAT_OPENS_S),
    FANS_START(Dimension.DURATION, Dimension.DURATION, Range.of(10, 14400), Figure.FANS_START_S),
    GAUGE_AT_FAN_START(
            Dimension.TEMPERATURE,
            Dimension.TEMPERATURE_DIFFERENCE,
            Range.of(253.15, 423.15),
            Figure.GAUGE_AT_FAN_START_K),
    FAN_START_CURRENT(Dimension.CURRENT, Dimension.CURRENT, Range.of(0, 800), Figure.FAN_START_A),
    FAN_RUNNING_CURRENT(Dimension.CURRENT, Dimension.CURRENT, Range.of(0, 400), Figure.FAN_RUNNING_A),
    CORE_DROP(
            Dimension.TEMPERATURE_DIFFERENCE, Dimension.TEMPERATURE_DIFFERENCE, Range.of(-20, 100), Figure.CORE_DROP_K),
    VOLTAGE(Dimension.VOLTAGE, Dimension.VOLTAGE, Range.of(0, 20), Figure.VOLTAGE_V);

    private final Dimension dimension;
    private final Dimension difference;
    private final Range sensible;
    private final Figure figure;

    MeasuredQuantity(Dimension dimension, Dimension difference, Range sensible, Figure figure) {
        this.dimension = dimension;
        this.difference = difference;
        this.sensible = sensible;
        this.figure = figure;
    }

    public Dimension dimension() {
        return dimension;
    }

    /** Kind of the difference of two such readings. */
    public Dimension difference() {
        return difference;
    }

    public Range sensible() {
        return sensible;
    }

    /** What the models expect it by; empty when it is held against the spec alone. */
    Optional<Figure> figure() {
        return Optional.ofNullable(figure);
    }

    public boolean isTime() {
        return dimension == Dimension.DURATION;
    }
}
