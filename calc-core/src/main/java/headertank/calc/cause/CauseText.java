package headertank.calc.cause;

import headertank.calc.quantity.MessageCode;
import java.util.Locale;

/** What the causes are called, and how bad each would have to be. */
public enum CauseText implements MessageCode {
    AIR_IN_COOLANT(0),
    AIR_IN_COOLANT_AMOUNT(1),
    AIR_SIDE_BLOCKED(0),
    AIR_SIDE_BLOCKED_AMOUNT(1),
    BYPASS_OPEN(0),
    CAP_WEAK(0),
    CAP_WEAK_AMOUNT(1),
    COOLANT_FLOW_LOW(0),
    COOLANT_FLOW_LOW_AMOUNT(1),
    DAY_HOTTER(0),
    DAY_HOTTER_AMOUNT(1),
    DUTY_HARDER(0),
    DUTY_HARDER_AMOUNT(1),
    EXHAUST_NEAR(0),
    FANS_OUT(0),
    FAN_BACKWARDS(0),
    FAN_LATE(0),
    FAN_LATE_AMOUNT(1),
    FAN_WEAK(0),
    FAN_WEAK_AMOUNT(1),
    GAS_IN_COOLANT(0),
    GAUGE_IN_HOSE(0),
    GAUGE_LAGGING(0),
    GAUGE_OFF(0),
    GAUGE_OFF_AMOUNT(1),
    HIGHER_UP(0),
    HIGHER_UP_AMOUNT(1),
    HOT_AIR_RETURNS(0),
    HOT_AIR_RETURNS_AMOUNT(1),
    MORE_HEAT(0),
    MORE_HEAT_AMOUNT(1),
    NOTHING_WRONG(0),
    ONE_FAN_OUT(0),
    SPEC_DIFFERS(0),
    THERMOSTAT_LATE(0),
    THERMOSTAT_LATE_AMOUNT(1),
    THERMOSTAT_OPEN(0),
    THERMOSTAT_SHUT(0),
    TUBES_FOULED(0),
    TUBES_FOULED_AMOUNT(1),
    READING(2);

    private static final String AMOUNT = "-amount";

    private final int arguments;

    CauseText(int arguments) {
        this.arguments = arguments;
    }

    /** @return {@code cause.}, the id of the cause, and {@code .amount} where it is one */
    @Override
    public String code() {
        String name = name().toLowerCase(Locale.ROOT).replace('_', '-');
        return "cause."
                + (name.endsWith(AMOUNT) ? name.substring(0, name.length() - AMOUNT.length()) + ".amount" : name);
    }

    @Override
    public int arguments() {
        return arguments;
    }
}
