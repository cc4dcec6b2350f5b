package headertank.calc.quantity;

/** The parts of a working. */
public enum WorkedPart implements MessageCode {
    HEAT_OF_THE_ENGINE,
    COOLANT_FLOW,
    AIR_THROUGH_THE_CORE,
    RADIATOR,
    WHAT_THE_POINT_ASKS,
    COOLANT,
    FANS,
    CURRENT,
    OIL,
    STEADY_BALANCE,
    BOILING,
    PUMP_INLET,
    WALL_OF_THE_HEAD,
    GAUGE,
    FIGURES;

    @Override
    public String code() {
        return MessageCode.of("working-part", this);
    }

    @Override
    public int arguments() {
        return 0;
    }
}
