package headertank.app.handover.item;

import static headertank.app.handover.item.Caution.BELT;
import static headertank.app.handover.item.Caution.BURN;
import static headertank.app.handover.item.Caution.ELECTRIC;
import static headertank.app.handover.item.Caution.FANS;
import static headertank.app.handover.item.Caution.FUMES;
import static headertank.app.handover.item.Caution.HOT_SYSTEM;
import static headertank.app.handover.item.Caution.PRESSURE;
import static headertank.app.handover.item.WarmUpStage.AFTER;
import static headertank.app.handover.item.WarmUpStage.COLD;
import static headertank.app.handover.item.WarmUpStage.HOT;
import static headertank.app.handover.item.WarmUpStage.WARMING;

import headertank.calc.carspec.BuildField;
import headertank.calc.choice.AirExit;
import headertank.calc.choice.Ducting;
import headertank.calc.choice.FanDrive;
import headertank.calc.choice.OilCooling;
import headertank.calc.choice.PumpDrive;
import headertank.calc.choice.ThermostatFitting;
import headertank.calc.choice.YesNo;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Every item that a check list may hold, in the order of the work; which of them a car needs follows from its build. The list
 * itself is common practice, no source.
 */
public enum ChecklistTask {
    COOLANT_FILL(COLD, null, BuildField.COOLANT_BASE, f -> true, HOT_SYSTEM),
    HOSES(COLD, null, null, f -> true, HOT_SYSTEM),
    CAP_TEST(COLD, MeasuredQuantity.CAP_OPENS, BuildField.CAP_PRESSURE, CarFacts::hasCap, HOT_SYSTEM),
    PRESSURE_TEST(
            COLD, MeasuredQuantity.PRESSURE_HELD, BuildField.CAP_PRESSURE, CarFacts::hasCap, PRESSURE, HOT_SYSTEM),
    BELT_RUN(
            COLD,
            null,
            BuildField.PUMP_DRIVE,
            f -> f.is(BuildField.PUMP_DRIVE, PumpDrive.ENGINE) || f.is(BuildField.FAN_DRIVE, FanDrive.CLUTCH),
            BELT),
    PUMP_ELECTRIC(COLD, null, null, f -> f.is(BuildField.PUMP_DRIVE, PumpDrive.ELECTRIC), ELECTRIC),
    FAN_FREE(COLD, null, BuildField.FAN_DRIVE, f -> !f.is(BuildField.FAN_DRIVE, FanDrive.NONE), FANS),
    FAN_DIRECTION(COLD, null, BuildField.FAN_MOUNTING, CarFacts::electricFans, FANS),
    SHROUD_FLAPS(COLD, null, null, f -> f.electricFans() && f.is(BuildField.FAN_FLAPS, YesNo.YES), FANS),
    GAUGE_SENSOR(COLD, null, BuildField.GAUGE_SENSOR, f -> true, BURN),
    FAN_SENSOR(COLD, null, BuildField.FAN_SENSOR, CarFacts::fansWait, FANS, BURN),
    DUCT(COLD, null, BuildField.AIR_DUCT, f -> f.is(BuildField.AIR_DUCT, Ducting.SEALED, Ducting.PARTLY)),
    HOOD_VENT(COLD, null, BuildField.AIR_EXIT, f -> f.is(BuildField.AIR_EXIT, AirExit.HOOD_VENT), BURN),
    FRONT_COOLERS(
            COLD,
            null,
            null,
            f -> f.is(BuildField.CHARGE_COOLER, YesNo.YES) || f.is(BuildField.CONDENSER, YesNo.YES),
            FANS),
    OIL_COOLER_AIR(COLD, null, null, f -> f.is(BuildField.OIL_COOLER, OilCooling.AIR, OilCooling.BOTH), BURN),
    OIL_COOLER_COOLANT(
            COLD, null, null, f -> f.is(BuildField.OIL_COOLER, OilCooling.COOLANT, OilCooling.BOTH), HOT_SYSTEM),
    THERMOSTAT_REMOVED(COLD, null, null, f -> f.is(BuildField.THERMOSTAT, ThermostatFitting.REMOVED), HOT_SYSTEM),
    BLEED(WARMING, null, null, f -> true, HOT_SYSTEM, FANS, FUMES),
    THERMOSTAT_OPENS(
            WARMING,
            MeasuredQuantity.THERMOSTAT_OPENS,
            BuildField.THERMOSTAT_OPENING,
            f -> f.is(BuildField.THERMOSTAT, ThermostatFitting.FITTED),
            BURN,
            BELT,
            FUMES),
    FANS_START(WARMING, MeasuredQuantity.FANS_START, BuildField.CONTROL_SET, CarFacts::fansWait, FANS, FUMES),
    GAUGE_AT_FAN_START(WARMING, MeasuredQuantity.GAUGE_AT_FAN_START, BuildField.GAUGE_SENSOR, CarFacts::fansWait, FANS),
    FAN_START_CURRENT(
            WARMING, MeasuredQuantity.FAN_START_CURRENT, BuildField.FAN_COUNT, CarFacts::electricFans, FANS, ELECTRIC),
    FAN_RUNNING_CURRENT(
            WARMING,
            MeasuredQuantity.FAN_RUNNING_CURRENT,
            BuildField.FAN_COUNT,
            CarFacts::electricFans,
            FANS,
            ELECTRIC),
    FAN_CLUTCH(HOT, null, null, f -> f.is(BuildField.FAN_DRIVE, FanDrive.CLUTCH), BELT, BURN),
    CORE_DROP(HOT, MeasuredQuantity.CORE_DROP, null, f -> true, BURN, FANS),
    VOLTAGE(HOT, MeasuredQuantity.VOLTAGE, null, f -> true, ELECTRIC, BELT),
    HOT_RUN_FANS(HOT, null, null, CarFacts::fansWait, FANS, BURN, FUMES),
    HOT_RUN(HOT, null, null, f -> !f.fansWait(), BURN, FUMES),
    LEAKS_HOT(HOT, null, null, f -> true, HOT_SYSTEM, BURN),
    LEVEL_AFTER(AFTER, null, null, f -> true, HOT_SYSTEM);

    /**
     * What a shop may leave out for a duty: where nothing boils over, burns, stands still or shows a wrong gauge because nobody has
     * looked (modelling choice). A technician who leaves any item out of one list says why.
     */
    private static final Set<ChecklistTask> MAY_BE_LEFT_OUT = Collections.unmodifiableSet(EnumSet.of(
            SHROUD_FLAPS,
            FAN_SENSOR,
            DUCT,
            HOOD_VENT,
            FRONT_COOLERS,
            THERMOSTAT_OPENS,
            GAUGE_AT_FAN_START,
            FAN_RUNNING_CURRENT,
            CORE_DROP,
            VOLTAGE));

    private final WarmUpStage stage;
    private final MeasuredQuantity quantity;
    private final BuildField field;
    private final Predicate<CarFacts> applies;
    private final List<Caution> cautions;

    ChecklistTask(
            WarmUpStage stage,
            MeasuredQuantity quantity,
            BuildField field,
            Predicate<CarFacts> applies,
            Caution... cautions) {
        this.stage = stage;
        this.quantity = quantity;
        this.field = field;
        this.applies = applies;
        this.cautions = List.of(cautions);
    }

    public WarmUpStage stage() {
        return stage;
    }

    Optional<MeasuredQuantity> quantity() {
        return Optional.ofNullable(quantity);
    }

    /** The field of the build whose value its sentences name. */
    Optional<BuildField> field() {
        return Optional.ofNullable(field);
    }

    boolean applies(CarFacts facts) {
        return applies.test(facts);
    }

    List<Caution> cautions() {
        return cautions;
    }

    /** Whether the owner may leave it out for a duty; everything else is always asked. */
    public boolean mayBeLeftOut() {
        return MAY_BE_LEFT_OUT.contains(this);
    }

    /** The item with this stored name. */
    public static Optional<ChecklistTask> of(String key) {
        return Arrays.stream(values()).filter(t -> t.key().equals(key)).findFirst();
    }

    /** What is measured at the item with this stored name. */
    public static Optional<MeasuredQuantity> quantityOf(String key) {
        return of(key).flatMap(ChecklistTask::quantity);
    }

    /** Stable name, as stored. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
