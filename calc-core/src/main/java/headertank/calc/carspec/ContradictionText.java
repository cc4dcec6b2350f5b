package headertank.calc.carspec;

import headertank.calc.quantity.MessageCode;

/** Which fields of a build cannot both be right, each a sentence. */
public enum ContradictionText implements MessageCode {
    /** Share of the speed at rated power, that speed. */
    IDLES_TOO_FAST(2),
    /** Running current. */
    STARTS_BELOW_RUNNING(1),
    /** Most rows in a core so deep. */
    TOO_MANY_ROWS(1),
    /** Hottest day. */
    COLDEST_DAY_IS_HOTTER(1),
    PUMP_ON_ENGINE(0),
    /** Lowest temperature at which it may be fully open. */
    OIL_THERMOSTAT_OPENS_BACKWARDS(1),
    /** Set point of full speed. */
    LOW_STEP_ABOVE_FULL(1),
    TABLE_ROW_IS_HALF(0),
    /** Lowest temperature here, field of the row before. */
    TABLE_TEMPERATURE_FALLS(2),
    /** Lowest duty here, field of the row before. */
    TABLE_DUTY_FALLS(2),
    TABLE_OF_ONE_ROW(0);

    private final int arguments;

    ContradictionText(int arguments) {
        this.arguments = arguments;
    }

    @Override
    public String code() {
        return MessageCode.of("contradiction", this);
    }

    @Override
    public int arguments() {
        return arguments;
    }
}
