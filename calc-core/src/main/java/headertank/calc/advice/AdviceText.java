package headertank.calc.advice;

import headertank.calc.quantity.MessageCode;

/** The changes that are tried for what they would buy. */
public enum AdviceText implements MessageCode {
    HOOD_VENT(0),
    LARGER_FACE(0),
    DEEPER_CORE(0),
    CLEAN_CORE(0),
    STRONGER_FANS(0),
    FANS_PULL(0),
    SHROUD(0),
    SHROUD_FLAPS(0),
    SEAL_DUCT(0),
    LARGER_INLET(0),
    FAN_RAMP(1),
    COOLER_THERMOSTAT(1),
    CLOSE_BYPASS(0),
    LARGER_PUMP(0),
    LESS_GLYCOL(0),
    OIL_AIR_COOLER(0);

    private final int arguments;

    AdviceText(int arguments) {
        this.arguments = arguments;
    }

    @Override
    public String code() {
        return MessageCode.of("advice", this);
    }

    @Override
    public int arguments() {
        return arguments;
    }
}
