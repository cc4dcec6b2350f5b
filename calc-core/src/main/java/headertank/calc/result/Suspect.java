package headertank.calc.result;

/**
 * Something that can be wrong on a car and that no value of it says, with what it would cost.
 *
 * @param kind what is wrong
 * @param costK margin that it takes from the duty [K], at least 0; where the car then has no steady state a bound
 */
public record Suspect(Kind kind, double costK) {

    /** What can be wrong. */
    public enum Kind {
        /** One of several electric fans stands: a fuse, a connector, a motor. */
        ONE_FAN_OUT,
        /** No fan turns: control, relay or the clutch of a fan on the engine. */
        FANS_OUT,
        /** A quarter of the core's face is shut that nobody knew of: mud, bent fins, something in front of it. */
        CORE_SHUT,
        /** Deposits in the tubes, four times as thick as in a used circuit and more than a new core shows. */
        TUBES_FOULED,
        /** The pump gives half its flow: a slipping belt, worn blades, too little coolant. */
        PUMP_WEAK,
        /** The thermostat opens 15 K later than it should. */
        THERMOSTAT_LATE
    }
}
