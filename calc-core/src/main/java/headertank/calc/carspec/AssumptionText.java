package headertank.calc.carspec;

import headertank.calc.quantity.MessageCode;

/** Why a value stands in for one that nobody stated. */
public enum AssumptionText implements MessageCode {
    FROM_POWER_OF_CLASS,
    FROM_CORE_HEIGHT,
    SPRINGS_AND_SEALS_TIRE,
    TYPICAL_OF_THE_CLASS,
    OF_CORE_CLASS,
    AS_BUILT,
    FACE_PER_POWER,
    PUMP_FUEL,
    MOST_COMMON_OF_CLASS,
    POWER_PER_LITRE,
    FROM_THE_DISPLACEMENT,
    TEMPERATE_SUMMER_DAY,
    TEMPERATE_WINTER_NIGHT,
    LOWLAND,
    SUMMER_DAY,
    MOST_RADIATORS_HAVE_ONE,
    UPRIGHT,
    USED_CORE,
    USED_COOLANT_CIRCUIT,
    MOST_FANS_PULL,
    FROM_CURRENT_AS_JET,
    FROM_CLASS_DIAMETER,
    FROM_CURRENT_AT_PEAK,
    FROM_THE_DIAMETER,
    RUNNING_CURRENT_PLUS_FIFTH,
    MOST_SHROUDS_HAVE_NONE,
    PULLEY_RATIO_WITH_SLIP,
    MOST_COMMON,
    PLAIN_WATER,
    NOT_STATED_AS_CLOSED,
    PUMP_FLOW_PER_POWER,
    NO_RUN_ON_STATED,
    FROM_THE_POWER,
    COMMON_WITH_AIR_COOLER,
    COMMON,
    COMMON_WIDTH,
    FROM_THE_CORE_FACE,
    FROM_ENGINE_KIND,
    TYPICAL_OF_THE_MATERIAL,
    CLASS_LIMIT,
    CLASS_CAUTION_LIMIT,
    TYPICAL_OF_TWO_STEPS,
    RAMP_TO_SET_POINT,
    HARDER_FOR_ALTERNATOR,
    FROM_THE_REST,
    TYPICAL_OF_CONTROL,
    TYPICAL_OF_A_RAMP,
    TYPICAL_OF_A_CONTROLLER,
    SHOP_FIGURE;

    @Override
    public String code() {
        return MessageCode.of("assumed", this);
    }

    @Override
    public int arguments() {
        return 0;
    }
}
