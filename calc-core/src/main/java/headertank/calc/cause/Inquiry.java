package headertank.calc.cause;

import headertank.calc.quantity.MessageCode;

/**
 * What can be asked about a car that came back hot: what a driver can say, and what a test in the workshop answers. The minutes of a test
 * are common practice, no source: a warm engine, hands that know the car, tools that lie ready.
 */
public enum Inquiry implements MessageCode {
    /** Where the needle stood. */
    NEEDLE(0),
    /** How it got there. */
    NEEDLE_MOVED(0),
    /** The warning lamp for the coolant. */
    LAMP(0),
    /** Steam, or the noise of boiling. */
    STEAM(0),
    /** Coolant lost. */
    LOSS(0),
    /** What was heard of the fans. */
    FAN_HEARD(0),
    /** The hose from the thermostat to the radiator. */
    UPPER_HOSE(0),
    /** Heat from the heater. */
    HEATER(0),
    /** What brought the needle down again. */
    COOLED_BY(0),
    /** How the engine ran. */
    ENGINE_RAN(0),
    /** Since when it runs hot. */
    STARTED(0),
    /** The hose from the radiator back to the engine, felt on a warm engine. */
    LOWER_HOSE(5),
    /** Level in the cold system. */
    LEVEL(3),
    /** The fans run by hand, their current clamped and the way they blow. */
    FAN_RUN(10),
    /** Reading at which the fans start by themselves. */
    FAN_START(15),
    /** The cap on a tester. */
    CAP(5),
    /** The thermostat in a pot with a thermometer, and the foot that closes the bypass. */
    POT(60),
    /** Pressure on the cold system. */
    COLD_PRESSURE(15),
    /** Combustion gas in the tank's air. */
    GAS(15),
    /** Infrared over the core's face on a warm engine. */
    CORE_FACE(10),
    /** A lamp behind the core. */
    CORE_LOOK(5),
    /** A mark on belt and pulley, and the suction hose looked at with revs. */
    BELT(10),
    /** Flow seen in the tank. */
    TANK_FLOW(5),
    /** A log at idle with the fan forced on. */
    FORCED_FAN(20),
    /** A second gauge beside the car's, and where its sensor sits. */
    SECOND_GAUGE(10),
    /** Seals of the core, ducts, and exhaust near what it heats. */
    SEALS(5),
    /** Day, height and how it was driven, held against what was agreed. */
    DAY(5),
    /** The car walked round with its spec in hand. */
    SPEC(10),
    /** Mixture and ignition from the engine's own log, and brakes felt after coasting. */
    HEAT_SOURCES(20);

    private final int minutes;

    Inquiry(int minutes) {
        this.minutes = minutes;
    }

    /** @return how long the test takes; 0 for what is asked of the driver [min] */
    public int minutes() {
        return minutes;
    }

    /** @return whether a driver can answer it; some of what a test answers, a driver knows as well */
    public boolean isWord() {
        return minutes == 0 || this == LOWER_HOSE || this == DAY;
    }

    /** @return whether a test in the workshop answers it */
    public boolean isTest() {
        return minutes > 0;
    }

    @Override
    public String code() {
        return MessageCode.of("inquiry", this);
    }

    @Override
    public int arguments() {
        return 0;
    }
}
