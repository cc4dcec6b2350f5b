package headertank.calc.verdict;

import headertank.calc.quantity.MessageCode;

/** What a verdict rests on, and what to do about it. */
public enum VerdictText implements MessageCode {
    MARGIN_UNCERTAIN(2, true),
    BEYOND_LIMIT_UNCERTAIN(2),
    MARGIN(5, true),
    BEYOND_LIMIT(5),
    AT_PEAK_OF_RUN(0),
    AT_POINT(1),
    NO_STEADY_STATE(0),
    LOWER_HEAT(0),
    END_RUN_AT_LIMIT(0),
    BACK_OFF_AT_LIMIT(0),
    DO_NOT_HAND_OVER(0),
    BELOW_BOILING(2, true),
    ABOVE_BOILING(2),
    RAISE_BOILING_POINT(0),
    OIL_BELOW_LIMIT(1, true),
    OIL_ABOVE_LIMIT(1),
    OIL_MARGIN(4, true),
    OIL_BEYOND_LIMIT(4),
    COOL_OIL(0),
    BATTERY_PAYS(2),
    EASE_ALTERNATOR(0),
    PUMP_LACKS_PRESSURE(2),
    CHECK_PUMP_INLET(0),
    COOLANT_RISES_TOO_MUCH(2),
    LOOK_FOR_COOLANT_FLOW(0),
    OUTSIDE_SOURCE(2),
    MEASURE_PART(0),
    RISK_FLAG(1);

    private final int arguments;
    private final boolean holds;

    VerdictText(int arguments) {
        this(arguments, false);
    }

    VerdictText(int arguments, boolean holds) {
        this.arguments = arguments;
        this.holds = holds;
    }

    /** @return whether it says that a limit is kept; all else that a finding can say is bad news, or at least worth knowing */
    public boolean holds() {
        return holds;
    }

    @Override
    public String code() {
        return MessageCode.of("verdict", this);
    }

    @Override
    public int arguments() {
        return arguments;
    }
}
