package headertank.calc.result;

import headertank.calc.quantity.MessageCode;

/** The answer to whether coolant must pass a radiator slowly. */
public enum SlowCoolantText implements MessageCode {
    MORE_FLOW_MORE_HEAT(6),
    GAIN_FLATTENS(3),
    PASSES(11),
    TWO_PASSES_WIN(0),
    THREE_PASSES_WIN(0),
    ONE_PASS_WINS(0),
    LEAVE_THERMOSTAT(3),
    TOO_COLD(3),
    NO_STEADY_TEMPERATURE(0),
    WARMING(3),
    BYPASS(4),
    PRESSURE(5);

    private final int arguments;

    SlowCoolantText(int arguments) {
        this.arguments = arguments;
    }

    @Override
    public String code() {
        return MessageCode.of("slow", this);
    }

    @Override
    public int arguments() {
        return arguments;
    }
}
