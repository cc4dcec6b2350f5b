package headertank.calc.whatif;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.choice.FanDrive;
import headertank.calc.choice.SensorPlacement;
import headertank.calc.control.FanControlSpec;
import headertank.calc.duty.Duty;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.rating.Margin;
import headertank.calc.rating.Plant;
import headertank.calc.result.RunResult;
import headertank.calc.transients.ControlComparison;
import headertank.calc.transients.RunFaults;
import headertank.calc.transients.RunSettings;
import headertank.calc.transients.RunSolver;
import headertank.calc.verdict.DrivenAgain;
import headertank.calc.verdict.DrivenAgain.Kind;
import headertank.calc.verdict.DutyOutcome;
import headertank.calc.verdict.Finding;
import headertank.calc.verdict.Verdict;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * Drives one car's schedule again with other fan controls, sensors, set points and faults. Switch and ramp share the set point,
 * so that only the kind of control differs. Cars without electric fans have none of this.
 */
public final class WhatIfs {

    private static final RunSettings SETTINGS = RunSettings.STANDARD.at(1);

    /** What a change of fans can move; the rest of a verdict stays as it is. */
    private static final Set<Finding.Code> MOVED =
            EnumSet.of(Finding.Code.COOLANT_MARGIN, Finding.Code.BOILING_MARGIN, Finding.Code.OIL_MARGIN);

    private final Function<DutyOutcome, List<Finding>> judge;
    private final Resolved resolved;
    private final Plant plant;
    private final DutyOutcome outcome;
    private final Duty duty;
    private final Optional<Duty> stay;
    private final double setK;
    private final List<DrivenAgain> rows = new ArrayList<>();

    private WhatIfs(Plant plant, DutyOutcome outcome, Function<DutyOutcome, List<Finding>> judge) {
        this.judge = judge;
        this.plant = plant;
        this.resolved = plant.resolved();
        this.outcome = outcome;
        this.duty = outcome.duty();
        this.stay = duty.points().stream().anyMatch(OperatingPoint::idles)
                ? Optional.of(ControlComparison.stay(duty))
                : Optional.empty();
        this.setK = resolved.value(BuildField.CONTROL_SET);
    }

    /**
     * @param plant the car
     * @param outcome what it does at a duty
     * @param judge what the policies of the rating find in an outcome, the worst first
     * @return all that apply to this car at this duty; none without a schedule
     */
    public static List<DrivenAgain> of(Plant plant, DutyOutcome outcome, Function<DutyOutcome, List<Finding>> judge) {
        if (outcome.run().isEmpty() || plant.fanDrive() != FanDrive.ELECTRIC) {
            return List.of();
        }
        return new WhatIfs(plant, outcome, judge).rows();
    }

    private List<DrivenAgain> rows() {
        boolean isSwitch = plant.control() instanceof FanControlSpec.Switch;
        boolean isRamp = plant.control() instanceof FanControlSpec.Ramp;
        if (!isSwitch && !isRamp) {
            drive(Kind.AS_IS, plant, setK, RunFaults.NONE);
        }
        controls(isSwitch, isRamp);
        if (isSwitch || isRamp) {
            boolean inHose = resolved.is(BuildField.FAN_SENSOR, SensorPlacement.RADIATOR_HOSE);
            drive(
                    inHose ? Kind.BLOCK_SENSOR : Kind.HOSE_SENSOR,
                    Plant.of(resolved.with(
                            BuildField.FAN_SENSOR, inHose ? SensorPlacement.BLOCK : SensorPlacement.RADIATOR_HOSE)),
                    setK,
                    RunFaults.NONE);
        }
        if (resolved.value(BuildField.FAN_COUNT) > 1) {
            drive(Kind.ONE_FAN_OUT, plant, setK, RunFaults.oneFanOut());
        }
        drive(Kind.NEVER_START, plant, setK, RunFaults.failureToStart());
        if (isSwitch || isRamp) {
            lower(Kind.SET_5_LOWER, 5);
            lower(Kind.SET_10_LOWER, 10);
        }
        return List.copyOf(rows);
    }

    private void controls(boolean isSwitch, boolean isRamp) {
        FanControlSpec relay =
                isSwitch ? plant.control() : new FanControlSpec.Switch(setK, FanControlSpec.Switch.USUAL_HYSTERESIS_K);
        FanControlSpec ramp = isRamp ? plant.control() : FanControlSpec.Ramp.to(setK);
        try {
            ControlComparison both = ControlComparison.of(plant, duty, relay, ramp, SETTINGS);
            add(Kind.SWITCH, isSwitch, setK, both.first(), stay.map(s -> both.firstHeld()));
            add(Kind.RAMP, isRamp, setK, both.second(), stay.map(s -> both.secondHeld()));
        } catch (OutOfRangeException beyond) {
            drive(Kind.AS_IS, plant, setK, RunFaults.NONE);
        }
    }

    private void lower(Kind kind, double byK) {
        double to = setK - byK;
        if (BuildField.CONTROL_SET.allowed().contains(to)) {
            drive(kind, Plant.of(resolved.with(BuildField.CONTROL_SET, to)), to, RunFaults.NONE);
        }
    }

    /** A car that leaves what the models cover has no row. */
    private void drive(Kind kind, Plant changed, double set, RunFaults faults) {
        try {
            RunSettings settings = SETTINGS.with(faults);
            RunResult run = RunSolver.run(changed, duty, settings);
            add(kind, kind == Kind.AS_IS, set, run, stay.map(s -> RunSolver.run(changed, s, settings)));
        } catch (OutOfRangeException beyond) {
            return;
        }
    }

    private void add(Kind kind, boolean asIs, double set, RunResult run, Optional<RunResult> held) {
        double margin = Margin.coolantK(
                resolved,
                Math.max(run.peakCoolantK(), held.map(RunResult::peakCoolantK).orElse(0.0)));
        double boiling = Math.min(
                run.lowestBoilingMarginK(),
                held.map(RunResult::lowestBoilingMarginK).orElse(Double.POSITIVE_INFINITY));
        double oil = Margin.oilK(
                resolved, Math.max(run.peakOilK(), held.map(RunResult::peakOilK).orElse(0.0)));
        rows.add(new DrivenAgain(kind, asIs, set, verdict(run, margin, boiling, oil), margin, run, held));
    }

    private Verdict verdict(RunResult run, double margin, double boiling, double oil) {
        DutyOutcome changed = new DutyOutcome(
                duty,
                outcome.decidingPointId(),
                true,
                margin,
                Optional.empty(),
                Double.NaN,
                Double.NaN,
                boiling,
                oil,
                Optional.empty(),
                outcome.points(),
                Optional.of(run),
                outcome.sides());
        return judge.apply(changed).stream()
                .filter(f -> MOVED.contains(f.code()))
                .map(Finding::verdict)
                .reduce(Verdict.GO, Verdict::worse);
    }
}
