package headertank.calc.advice;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.choice.AirExit;
import headertank.calc.choice.BypassState;
import headertank.calc.choice.Ducting;
import headertank.calc.choice.FanControlKind;
import headertank.calc.choice.FanDrive;
import headertank.calc.choice.FanMounting;
import headertank.calc.choice.OilCooling;
import headertank.calc.choice.ThermostatFitting;
import headertank.calc.choice.YesNo;
import headertank.calc.quantity.Message;
import headertank.calc.quantity.SiFigure;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A change that a shop could make, as a function of the car as it is. The sizes of the steps (15 % more face, 30 % more pump
 * flow, ...) are modelling choices: steps that a shop commonly makes.
 *
 * @param id stable name
 * @param label what to change
 * @param change the changed car, or empty when there is nothing to change
 */
record PossibleChange(String id, Message label, Function<Resolved, Optional<Resolved>> change) {

    /** Coolant temperature to which a pre-cooling ramp winds the fans up [K]: 85 C. */
    private static final double RAMP_SET_K = 358.15;

    private static final double COOL_THERMOSTAT_K = 351.15;

    static final List<PossibleChange> ALL = List.of(
            new PossibleChange(
                    "hood-vent",
                    AdviceText.HOOD_VENT.with(),
                    r -> when(
                            !r.is(BuildField.AIR_EXIT, AirExit.HOOD_VENT),
                            r.with(BuildField.AIR_EXIT, AirExit.HOOD_VENT)
                                    .with(BuildField.AIR_EXIT_AREA, within(BuildField.AIR_EXIT_AREA, r, 1, 0.08)))),
            new PossibleChange(
                    "larger-face",
                    AdviceText.LARGER_FACE.with(),
                    r -> when(
                            true,
                            r.with(BuildField.CORE_WIDTH, within(BuildField.CORE_WIDTH, r, 1.15, 0))
                                    .with(BuildField.AIR_INLET, within(BuildField.AIR_INLET, r, 1.15, 0)))),
            new PossibleChange(
                    "deeper-core",
                    AdviceText.DEEPER_CORE.with(),
                    r -> when(
                            r.value(BuildField.CORE_DEPTH) < 0.045,
                            r.with(BuildField.CORE_DEPTH, Math.min(0.055, 1.5 * r.value(BuildField.CORE_DEPTH))))),
            new PossibleChange(
                    "clean-core",
                    AdviceText.CLEAN_CORE.with(),
                    r -> when(
                            r.value(BuildField.CORE_BLOCKED) > 0.02 || r.value(BuildField.CORE_FOULING) > 5e-5,
                            r.with(BuildField.CORE_BLOCKED, Math.min(0.01, r.value(BuildField.CORE_BLOCKED)))
                                    .with(
                                            BuildField.CORE_FOULING,
                                            Math.min(3.5e-5, r.value(BuildField.CORE_FOULING))))),
            new PossibleChange(
                    "stronger-fans",
                    AdviceText.STRONGER_FANS.with(),
                    r -> when(
                            r.is(BuildField.FAN_DRIVE, FanDrive.ELECTRIC),
                            r.with(BuildField.FAN_FLOW, within(BuildField.FAN_FLOW, r, 1.3, 0))
                                    .with(BuildField.FAN_SHUT_OFF, within(BuildField.FAN_SHUT_OFF, r, 1.2, 0))
                                    .with(BuildField.FAN_CURRENT, within(BuildField.FAN_CURRENT, r, 1.5, 0)))),
            new PossibleChange(
                    "fans-pull",
                    AdviceText.FANS_PULL.with(),
                    r -> when(
                            r.is(BuildField.FAN_MOUNTING, FanMounting.PUSHING),
                            r.with(BuildField.FAN_MOUNTING, FanMounting.PULLING))),
            new PossibleChange(
                    "shroud",
                    AdviceText.SHROUD.with(),
                    r -> when(r.value(BuildField.FAN_COVER) < 0.95, r.with(BuildField.FAN_COVER, 1.0))),
            new PossibleChange(
                    "shroud-flaps",
                    AdviceText.SHROUD_FLAPS.with(),
                    r -> when(
                            r.is(BuildField.FAN_FLAPS, YesNo.NO) && r.value(BuildField.FAN_COVER) < 0.95,
                            r.with(BuildField.FAN_FLAPS, YesNo.YES))),
            new PossibleChange(
                    "seal-duct",
                    AdviceText.SEAL_DUCT.with(),
                    r -> when(!r.is(BuildField.AIR_DUCT, Ducting.SEALED), r.with(BuildField.AIR_DUCT, Ducting.SEALED))),
            new PossibleChange(
                    "larger-inlet",
                    AdviceText.LARGER_INLET.with(),
                    r -> when(true, r.with(BuildField.AIR_INLET, within(BuildField.AIR_INLET, r, 1.25, 0)))),
            new PossibleChange(
                    "fan-ramp",
                    AdviceText.FAN_RAMP.with(SiFigure.temperature(RAMP_SET_K)),
                    r -> when(
                            r.is(BuildField.FAN_DRIVE, FanDrive.ELECTRIC)
                                    && (r.is(BuildField.CONTROL_KIND, FanControlKind.SWITCH)
                                            || r.is(BuildField.CONTROL_KIND, FanControlKind.TWO_STEP)),
                            r.with(BuildField.CONTROL_KIND, FanControlKind.RAMP)
                                    .with(BuildField.CONTROL_SET, RAMP_SET_K)
                                    .with(BuildField.CONTROL_BAND, 15))),
            new PossibleChange(
                    "cooler-thermostat",
                    AdviceText.COOLER_THERMOSTAT.with(SiFigure.temperature(COOL_THERMOSTAT_K)),
                    r -> when(
                            r.is(BuildField.THERMOSTAT, ThermostatFitting.FITTED)
                                    && r.value(BuildField.THERMOSTAT_OPENING) > COOL_THERMOSTAT_K + 2,
                            r.with(BuildField.THERMOSTAT_OPENING, COOL_THERMOSTAT_K))),
            new PossibleChange(
                    "close-bypass",
                    AdviceText.CLOSE_BYPASS.with(),
                    r -> when(
                            r.is(BuildField.THERMOSTAT_BYPASS, BypassState.OPEN),
                            r.with(
                                    BuildField.THERMOSTAT_BYPASS,
                                    r.is(BuildField.THERMOSTAT, ThermostatFitting.FITTED)
                                            ? BypassState.CLOSES_WITH_LIFT
                                            : BypassState.BLOCKED))),
            new PossibleChange(
                    "larger-pump",
                    AdviceText.LARGER_PUMP.with(),
                    r -> when(true, r.with(BuildField.PUMP_FLOW, within(BuildField.PUMP_FLOW, r, 1.3, 0)))),
            new PossibleChange(
                    "less-glycol",
                    AdviceText.LESS_GLYCOL.with(),
                    r -> when(r.value(BuildField.COOLANT_GLYCOL) > 0.40, r.with(BuildField.COOLANT_GLYCOL, 0.33))),
            new PossibleChange(
                    "oil-air-cooler",
                    AdviceText.OIL_AIR_COOLER.with(),
                    r -> when(
                            r.is(BuildField.OIL_COOLER, OilCooling.COOLANT)
                                    || r.is(BuildField.OIL_COOLER, OilCooling.NONE),
                            r.with(BuildField.OIL_COOLER, OilCooling.AIR))));

    private static Optional<Resolved> when(boolean possible, Resolved changed) {
        return possible ? Optional.of(changed) : Optional.empty();
    }

    private static double within(BuildField field, Resolved r, double factor, double more) {
        return field.allowed().clamp(r.value(field) * factor + more);
    }
}
