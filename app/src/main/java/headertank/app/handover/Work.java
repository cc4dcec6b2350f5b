package headertank.app.handover;

import static headertank.app.handover.Caution.BELT;
import static headertank.app.handover.Caution.BURN;
import static headertank.app.handover.Caution.ELECTRIC;
import static headertank.app.handover.Caution.FANS;
import static headertank.app.handover.Caution.FUMES;
import static headertank.app.handover.Caution.HOT_SYSTEM;
import static headertank.app.handover.Caution.PRESSURE;
import static headertank.app.handover.Stage.AFTER;
import static headertank.app.handover.Stage.COLD;
import static headertank.app.handover.Stage.HOT;
import static headertank.app.handover.Stage.WARMING;

import headertank.calc.build.BuildField;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Every item that a check list may hold, in the order of the work; which of them a car needs follows from its build. The list
 * itself is common practice, no source.
 */
enum Work {
    COOLANT_FILL(COLD, null, BuildField.COOLANT_BASE, f -> true, HOT_SYSTEM),
    HOSES(COLD, null, null, f -> true, HOT_SYSTEM),
    CAP_TEST(COLD, Quantity.CAP_OPENS, BuildField.CAP_PRESSURE, Facts::hasCap, HOT_SYSTEM),
    PRESSURE_TEST(COLD, Quantity.PRESSURE_HELD, BuildField.CAP_PRESSURE, Facts::hasCap, PRESSURE, HOT_SYSTEM),
    BELT_RUN(
            COLD,
            null,
            BuildField.PUMP_DRIVE,
            f -> f.is(BuildField.PUMP_DRIVE, "ENGINE") || f.is(BuildField.FAN_DRIVE, "CLUTCH"),
            BELT),
    PUMP_ELECTRIC(COLD, null, null, f -> f.is(BuildField.PUMP_DRIVE, "ELECTRIC"), ELECTRIC),
    FAN_FREE(COLD, null, BuildField.FAN_DRIVE, f -> !f.is(BuildField.FAN_DRIVE, "NONE"), FANS),
    FAN_DIRECTION(COLD, null, BuildField.FAN_MOUNTING, Facts::electricFans, FANS),
    SHROUD_FLAPS(COLD, null, null, f -> f.electricFans() && f.is(BuildField.FAN_FLAPS, "YES"), FANS),
    GAUGE_SENSOR(COLD, null, BuildField.GAUGE_SENSOR, f -> true, BURN),
    FAN_SENSOR(COLD, null, BuildField.FAN_SENSOR, Facts::fansWait, FANS, BURN),
    DUCT(COLD, null, BuildField.AIR_DUCT, f -> f.is(BuildField.AIR_DUCT, "SEALED", "PARTLY")),
    HOOD_VENT(COLD, null, BuildField.AIR_EXIT, f -> f.is(BuildField.AIR_EXIT, "HOOD_VENT"), BURN),
    FRONT_COOLERS(
            COLD, null, null, f -> f.is(BuildField.CHARGE_COOLER, "YES") || f.is(BuildField.CONDENSER, "YES"), FANS),
    OIL_COOLER_AIR(COLD, null, null, f -> f.is(BuildField.OIL_COOLER, "AIR", "BOTH"), BURN),
    OIL_COOLER_COOLANT(COLD, null, null, f -> f.is(BuildField.OIL_COOLER, "COOLANT", "BOTH"), HOT_SYSTEM),
    THERMOSTAT_REMOVED(COLD, null, null, f -> f.is(BuildField.THERMOSTAT, "REMOVED"), HOT_SYSTEM),
    BLEED(WARMING, null, null, f -> true, HOT_SYSTEM, FANS, FUMES),
    THERMOSTAT_OPENS(
            WARMING,
            Quantity.THERMOSTAT_OPENS,
            BuildField.THERMOSTAT_OPENING,
            f -> f.is(BuildField.THERMOSTAT, "FITTED"),
            BURN,
            BELT,
            FUMES),
    FANS_START(WARMING, Quantity.FANS_START, BuildField.CONTROL_SET, Facts::fansWait, FANS, FUMES),
    GAUGE_AT_FAN_START(WARMING, Quantity.GAUGE_AT_FAN_START, BuildField.GAUGE_SENSOR, Facts::fansWait, FANS),
    FAN_START_CURRENT(WARMING, Quantity.FAN_START_CURRENT, BuildField.FAN_COUNT, Facts::electricFans, FANS, ELECTRIC),
    FAN_RUNNING_CURRENT(
            WARMING, Quantity.FAN_RUNNING_CURRENT, BuildField.FAN_COUNT, Facts::electricFans, FANS, ELECTRIC),
    FAN_CLUTCH(HOT, null, null, f -> f.is(BuildField.FAN_DRIVE, "CLUTCH"), BELT, BURN),
    CORE_DROP(HOT, Quantity.CORE_DROP, null, f -> true, BURN, FANS),
    VOLTAGE(HOT, Quantity.VOLTAGE, null, f -> true, ELECTRIC, BELT),
    HOT_RUN_FANS(HOT, null, null, Facts::fansWait, FANS, BURN, FUMES),
    HOT_RUN(HOT, null, null, f -> !f.fansWait(), BURN, FUMES),
    LEAKS_HOT(HOT, null, null, f -> true, HOT_SYSTEM, BURN),
    LEVEL_AFTER(AFTER, null, null, f -> true, HOT_SYSTEM);

    private final Stage stage;
    private final Quantity quantity;
    private final BuildField field;
    private final Predicate<Facts> applies;
    private final List<Caution> cautions;

    Work(Stage stage, Quantity quantity, BuildField field, Predicate<Facts> applies, Caution... cautions) {
        this.stage = stage;
        this.quantity = quantity;
        this.field = field;
        this.applies = applies;
        this.cautions = List.of(cautions);
    }

    Stage stage() {
        return stage;
    }

    Optional<Quantity> quantity() {
        return Optional.ofNullable(quantity);
    }

    /** The field of the build whose value its sentences name. */
    Optional<BuildField> field() {
        return Optional.ofNullable(field);
    }

    boolean applies(Facts facts) {
        return applies.test(facts);
    }

    List<Caution> cautions() {
        return cautions;
    }

    /** Stable name, as stored. */
    String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
