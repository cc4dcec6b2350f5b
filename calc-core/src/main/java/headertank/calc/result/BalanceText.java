package headertank.calc.result;

import headertank.calc.quantity.MessageCode;

/** Why a point has no steady state. */
public enum BalanceText implements MessageCode {
    /** Heat to the coolant, hottest temperature tried, heat that is missing there. */
    HEAT_EXCEEDS_COOLING(3),
    NO_COOLANT_FLOW(0);

    private final int arguments;

    BalanceText(int arguments) {
        this.arguments = arguments;
    }

    @Override
    public String code() {
        return MessageCode.of("balance", this);
    }

    @Override
    public int arguments() {
        return arguments;
    }
}
