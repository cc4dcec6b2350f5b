package headertank.calc.risk;

import headertank.calc.quantity.MessageCode;

/** What the rules say about risky choices. */
public enum RuleText implements MessageCode {
    ABRUPT_FAN_START_ADVICE("abrupt-fan-start.advice", 0),
    ABRUPT_FAN_START_ALL_FANS_STARTING("abrupt-fan-start.all-fans-starting", 0),
    ABRUPT_FAN_START_ALTERNATOR_AT_IDLE("abrupt-fan-start.alternator-at-idle", 0),
    ABRUPT_FAN_START_BATTERY_AT_START("abrupt-fan-start.battery-at-start", 0),
    ABRUPT_FAN_START_BATTERY_CHARGE("abrupt-fan-start.battery-charge", 0),
    ABRUPT_FAN_START_BATTERY_WHILE_RUNNING("abrupt-fan-start.battery-while-running", 0),
    ABRUPT_FAN_START_CAUTION("abrupt-fan-start.caution", 0),
    ABRUPT_FAN_START_REASON("abrupt-fan-start.reason", 0),
    ABRUPT_FAN_START_STARTS("abrupt-fan-start.starts", 0),
    ABRUPT_FAN_START_TITLE("abrupt-fan-start.title", 0),
    BARGAIN_CORE_ADVICE("bargain-core.advice", 0),
    BARGAIN_CORE_GAIN("bargain-core.gain", 0),
    BARGAIN_CORE_REASON("bargain-core.reason", 0),
    BARGAIN_CORE_TITLE("bargain-core.title", 0),
    BARGAIN_CORE_TRADE("bargain-core.trade", 0),
    CAP_TOO_WEAK_ADVICE("cap-too-weak.advice", 0),
    CAP_TOO_WEAK_BOILING_MARGIN("cap-too-weak.boiling-margin", 0),
    CAP_TOO_WEAK_CAUTION("cap-too-weak.caution", 0),
    CAP_TOO_WEAK_PRESSURE_HELD("cap-too-weak.pressure-held", 0),
    CAP_TOO_WEAK_PRESSURE_NEEDED("cap-too-weak.pressure-needed", 1),
    CAP_TOO_WEAK_REASON("cap-too-weak.reason", 1),
    CAP_TOO_WEAK_TITLE("cap-too-weak.title", 0),
    CLUTCH_FAN_TILTED_ADVICE("clutch-fan-tilted.advice", 0),
    CLUTCH_FAN_TILTED_CAUTION("clutch-fan-tilted.caution", 0),
    CLUTCH_FAN_TILTED_GAIN("clutch-fan-tilted.gain", 0),
    CLUTCH_FAN_TILTED_REASON("clutch-fan-tilted.reason", 0),
    CLUTCH_FAN_TILTED_TITLE("clutch-fan-tilted.title", 0),
    CLUTCH_FAN_TILTED_TRADE("clutch-fan-tilted.trade", 0),
    COOLANT_FREEZES_ABOVE_FREEZING("coolant-freezes.above-freezing", 0),
    COOLANT_FREEZES_ADVICE("coolant-freezes.advice", 0),
    COOLANT_FREEZES_CAUTION("coolant-freezes.caution", 0),
    COOLANT_FREEZES_COLDEST_DAY("coolant-freezes.coldest-day", 0),
    COOLANT_FREEZES_FREEZING_POINT("coolant-freezes.freezing-point", 0),
    COOLANT_FREEZES_REASON("coolant-freezes.reason", 0),
    COOLANT_FREEZES_TITLE("coolant-freezes.title", 0),
    COOLANT_FREEZES_TITLE_CLOSE("coolant-freezes.title-close", 0),
    FAN_SET_BELOW_THERMOSTAT_ADVICE("fan-set-below-thermostat.advice", 1),
    FAN_SET_BELOW_THERMOSTAT_CAUTION("fan-set-below-thermostat.caution", 0),
    FAN_SET_BELOW_THERMOSTAT_FANS_FROM("fan-set-below-thermostat.fans-from", 0),
    FAN_SET_BELOW_THERMOSTAT_FAN_CHARGE("fan-set-below-thermostat.fan-charge", 0),
    FAN_SET_BELOW_THERMOSTAT_OPENS_AT("fan-set-below-thermostat.opens-at", 0),
    FAN_SET_BELOW_THERMOSTAT_OPEN_AT("fan-set-below-thermostat.open-at", 0),
    FAN_SET_BELOW_THERMOSTAT_REASON("fan-set-below-thermostat.reason", 0),
    FAN_SET_BELOW_THERMOSTAT_TITLE("fan-set-below-thermostat.title", 0),
    FAN_SET_BELOW_THERMOSTAT_TRADE("fan-set-below-thermostat.trade", 0),
    IMPOSSIBLE_FAN_CLAIM_ADVICE("impossible-fan-claim.advice", 0),
    IMPOSSIBLE_FAN_CLAIM_ASSUMED_CURRENT("impossible-fan-claim.assumed-current", 0),
    IMPOSSIBLE_FAN_CLAIM_ASSUMED_DIAMETER("impossible-fan-claim.assumed-diameter", 0),
    IMPOSSIBLE_FAN_CLAIM_CAUTION("impossible-fan-claim.caution", 0),
    IMPOSSIBLE_FAN_CLAIM_CURRENT("impossible-fan-claim.current", 0),
    IMPOSSIBLE_FAN_CLAIM_DOUBTFUL_ADVICE("impossible-fan-claim.doubtful-advice", 0),
    IMPOSSIBLE_FAN_CLAIM_DOUBTFUL_REASON("impossible-fan-claim.doubtful-reason", 0),
    IMPOSSIBLE_FAN_CLAIM_DOUBTFUL_TITLE("impossible-fan-claim.doubtful-title", 0),
    IMPOSSIBLE_FAN_CLAIM_ELECTRIC_POWER("impossible-fan-claim.electric-power", 0),
    IMPOSSIBLE_FAN_CLAIM_GAIN_AT_POSSIBLE("impossible-fan-claim.gain-at-possible", 0),
    IMPOSSIBLE_FAN_CLAIM_GAIN_AT_USUAL("impossible-fan-claim.gain-at-usual", 0),
    IMPOSSIBLE_FAN_CLAIM_JET_POWER("impossible-fan-claim.jet-power", 0),
    IMPOSSIBLE_FAN_CLAIM_LEAST_CURRENT("impossible-fan-claim.least-current", 0),
    IMPOSSIBLE_FAN_CLAIM_MEASURED_ADVICE("impossible-fan-claim.measured-advice", 0),
    IMPOSSIBLE_FAN_CLAIM_MEASURED_TITLE("impossible-fan-claim.measured-title", 0),
    IMPOSSIBLE_FAN_CLAIM_POSSIBLE_FLOW("impossible-fan-claim.possible-flow", 0),
    IMPOSSIBLE_FAN_CLAIM_REASON("impossible-fan-claim.reason", 0),
    IMPOSSIBLE_FAN_CLAIM_TITLE("impossible-fan-claim.title", 0),
    IMPOSSIBLE_FAN_CLAIM_UNPROVEN_ADVICE("impossible-fan-claim.unproven-advice", 0),
    IMPOSSIBLE_FAN_CLAIM_UNPROVEN_REASON("impossible-fan-claim.unproven-reason", 0),
    IMPOSSIBLE_FAN_CLAIM_UNPROVEN_TITLE("impossible-fan-claim.unproven-title", 0),
    IMPOSSIBLE_FAN_CLAIM_USUAL_FLOW("impossible-fan-claim.usual-flow", 0),
    NO_SHROUD_ADVICE("no-shroud.advice", 0),
    NO_SHROUD_CAUTION("no-shroud.caution", 0),
    NO_SHROUD_GAIN("no-shroud.gain", 0),
    NO_SHROUD_REASON("no-shroud.reason", 0),
    NO_SHROUD_TITLE("no-shroud.title", 0),
    NO_SHROUD_TRADE("no-shroud.trade", 0),
    NO_WAY_OUT_ADVICE("no-way-out.advice", 0),
    NO_WAY_OUT_CAUTION("no-way-out.caution", 0),
    NO_WAY_OUT_GAIN("no-way-out.gain", 0),
    NO_WAY_OUT_REASON("no-way-out.reason", 0),
    NO_WAY_OUT_TITLE("no-way-out.title", 0),
    NO_WAY_OUT_TRADE("no-way-out.trade", 0),
    OIL_OVER_TARGET_ADVICE("oil-over-target.advice", 0),
    OIL_OVER_TARGET_CAUTION("oil-over-target.caution", 0),
    OIL_OVER_TARGET_REASON("oil-over-target.reason", 3),
    OIL_OVER_TARGET_TEMPERATURE("oil-over-target.temperature", 0),
    OIL_OVER_TARGET_TITLE("oil-over-target.title", 0),
    PUSHING_FAN_ADVICE("pushing-fan.advice", 0),
    PUSHING_FAN_CAUTION("pushing-fan.caution", 0),
    PUSHING_FAN_GAIN("pushing-fan.gain", 0),
    PUSHING_FAN_REASON("pushing-fan.reason", 0),
    PUSHING_FAN_TITLE("pushing-fan.title", 0),
    SENSOR_IN_HOSE_ADVICE("sensor-in-hose.advice", 0),
    SENSOR_IN_HOSE_CAUTION("sensor-in-hose.caution", 0),
    SENSOR_IN_HOSE_ERROR_FLOWING("sensor-in-hose.error-flowing", 0),
    SENSOR_IN_HOSE_ERROR_STANDING("sensor-in-hose.error-standing", 0),
    SENSOR_IN_HOSE_GAIN("sensor-in-hose.gain", 0),
    SENSOR_IN_HOSE_REASON("sensor-in-hose.reason", 0),
    SENSOR_IN_HOSE_TITLE("sensor-in-hose.title", 0),
    SENSOR_IN_HOSE_TITLE_FANS("sensor-in-hose.title-fans", 0),
    SENSOR_IN_HOSE_TITLE_GAUGE("sensor-in-hose.title-gauge", 0),
    SETUP_FROM_ALCOHOL_CAR_ADVICE("setup-from-alcohol-car.advice", 0),
    SETUP_FROM_ALCOHOL_CAR_GAIN("setup-from-alcohol-car.gain", 0),
    SETUP_FROM_ALCOHOL_CAR_REASON("setup-from-alcohol-car.reason", 0),
    SETUP_FROM_ALCOHOL_CAR_TITLE("setup-from-alcohol-car.title", 0),
    SETUP_FROM_ALCOHOL_CAR_WALL_HEAT_RATIO("setup-from-alcohol-car.wall-heat-ratio", 0),
    THERMOSTAT_REMOVED_ADVICE("thermostat-removed.advice", 0),
    THERMOSTAT_REMOVED_CAUTION("thermostat-removed.caution", 0),
    THERMOSTAT_REMOVED_COOLANT_WITH("thermostat-removed.coolant-with", 1),
    THERMOSTAT_REMOVED_COOLANT_WITHOUT("thermostat-removed.coolant-without", 1),
    THERMOSTAT_REMOVED_DROP("thermostat-removed.drop", 0),
    THERMOSTAT_REMOVED_GAIN("thermostat-removed.gain", 0),
    THERMOSTAT_REMOVED_REASON("thermostat-removed.reason", 0),
    THERMOSTAT_REMOVED_TITLE("thermostat-removed.title", 0),
    THERMOSTAT_REMOVED_TRADE("thermostat-removed.trade", 0);

    private final String part;
    private final int arguments;

    RuleText(String part, int arguments) {
        this.part = part;
        this.arguments = arguments;
    }

    /** @return {@code rule.}, the id of the rule, what it says */
    @Override
    public String code() {
        return "rule." + part;
    }

    @Override
    public int arguments() {
        return arguments;
    }
}
