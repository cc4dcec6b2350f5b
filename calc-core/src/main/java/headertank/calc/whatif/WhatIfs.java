package headertank.calc.whatif;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.choice.FanControlKind;
import headertank.calc.choice.FanDrive;
import headertank.calc.choice.SensorPlacement;
import headertank.calc.control.FanControlSpec;
import headertank.calc.duty.Duty;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.duty.Schedule;
import headertank.calc.judged.DutyRater;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.rating.Margin;
import headertank.calc.rating.Plant;
import headertank.calc.result.RunResult;
import headertank.calc.transients.RunFaults;
import headertank.calc.transients.RunSettings;
import headertank.calc.transients.RunSolver;
import headertank.calc.verdict.DrivenAgain;
import headertank.calc.verdict.DrivenAgain.Kind;
import headertank.calc.verdict.DutyOutcome;
import headertank.calc.verdict.DutyVerdict;
import headertank.calc.verdict.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;

/**
 * Drives one car's schedule again with other fan controls, sensors, set points and faults. Switch and ramp share the set point,
 * so that only the kind of control differs. Cars without electric fans have none of this.
 */
public final class WhatIfs {

    private static final RunSettings SETTINGS = RunSettings.STANDARD.at(1);
    private static final double STAY_S = 1800;

    private final DutyOutcome rated;
    private final Verdict verdict;
    private final BiFunction<Resolved, DutyOutcome, Verdict> judge;
    private final Resolved car;
    private final Plant plant;
    private final Duty duty;
    private final Optional<Duty> stay;
    private final double setK;
    private final Driven asItIs;
    private final DutyOutcome expected;
    private final List<DrivenAgain> rows = new ArrayList<>();

    /** The schedule and, where the duty idles, half an hour there. */
    private record Driven(Resolved limits, RunResult run, Optional<RunResult> stay) {

        double coolantK() {
            return Margin.coolantK(
                    limits,
                    Math.max(
                            run.peaks().coolantK(),
                            stay.map(r -> r.peaks().coolantK()).orElse(0.0)));
        }

        double boilingK() {
            return Math.min(
                    run.peaks().lowestBoilingMarginK(),
                    stay.map(r -> r.peaks().lowestBoilingMarginK()).orElse(Double.POSITIVE_INFINITY));
        }

        double oilK() {
            return Margin.oilK(
                    limits,
                    Math.max(run.peaks().oilK(), stay.map(r -> r.peaks().oilK()).orElse(0.0)));
        }
    }

    private WhatIfs(Resolved car, DutyVerdict rated, BiFunction<Resolved, DutyOutcome, Verdict> judge) {
        this.rated = rated.outcome();
        this.verdict = rated.verdict();
        this.judge = judge;
        this.car = car;
        this.plant = Plant.of(car);
        this.duty = rated.duty();
        this.stay = duty.points().stream().anyMatch(OperatingPoint::idles) ? Optional.of(stay(duty)) : Optional.empty();
        this.setK = car.value(BuildField.CONTROL_SET);
        this.asItIs = driven(plant, RunFaults.NONE);
        this.expected = DutyRater.outcome(plant, duty, Optional.of(asItIs.run()));
    }

    /**
     * @param car every value that it was rated with
     * @param rated what was found
     * @param judge the verdict of the rating's rules and policies on the car with other values, and what it is then expected to do
     * @return all that apply to this car at this duty; none without a schedule, and where half an hour of idle leaves the models
     */
    public static List<DrivenAgain> of(
            Resolved car, DutyVerdict rated, BiFunction<Resolved, DutyOutcome, Verdict> judge) {
        if (rated.outcome().run().isEmpty() || !car.is(BuildField.FAN_DRIVE, FanDrive.ELECTRIC)) {
            return List.of();
        }
        try {
            return new WhatIfs(car, rated, judge).rows();
        } catch (OutOfRangeException beyond) {
            return List.of();
        }
    }

    private List<DrivenAgain> rows() {
        boolean isSwitch = plant.control() instanceof FanControlSpec.Switch;
        boolean isRamp = plant.control() instanceof FanControlSpec.Ramp;
        if (!isSwitch && !isRamp) {
            add(Kind.AS_IS);
        }
        if (isSwitch) {
            add(Kind.SWITCH);
        } else {
            change(Kind.SWITCH, control(FanControlKind.SWITCH, FanControlSpec.Switch.USUAL_HYSTERESIS_K), setK);
        }
        if (isRamp) {
            add(Kind.RAMP);
        } else {
            Resolved ramp = control(FanControlKind.RAMP, FanControlSpec.Ramp.USUAL_BAND_K)
                    .with(BuildField.CONTROL_MIN_DUTY, FanControlSpec.Ramp.USUAL_MINIMUM_DUTY);
            change(Kind.RAMP, ramp, setK);
        }
        if (isSwitch || isRamp) {
            boolean inHose = car.is(BuildField.FAN_SENSOR, SensorPlacement.RADIATOR_HOSE);
            SensorPlacement other = inHose ? SensorPlacement.BLOCK : SensorPlacement.RADIATOR_HOSE;
            change(inHose ? Kind.BLOCK_SENSOR : Kind.HOSE_SENSOR, car.with(BuildField.FAN_SENSOR, other), setK);
        }
        if (car.value(BuildField.FAN_COUNT) > 1) {
            breakDown(Kind.ONE_FAN_OUT, RunFaults.oneFanOut());
        }
        breakDown(Kind.NEVER_START, RunFaults.failureToStart());
        if (isSwitch || isRamp) {
            lower(Kind.SET_5_LOWER, 5);
            lower(Kind.SET_10_LOWER, 10);
        }
        return List.copyOf(rows);
    }

    private Resolved control(FanControlKind kind, double bandK) {
        return car.with(BuildField.CONTROL_KIND, kind).with(BuildField.CONTROL_BAND, bandK);
    }

    private void lower(Kind kind, double byK) {
        double to = setK - byK;
        if (BuildField.CONTROL_SET.allowed().contains(to)) {
            change(kind, car.with(BuildField.CONTROL_SET, to), to);
        }
    }

    /** The car as it stands has the verdict that it was given. */
    private void add(Kind kind) {
        rows.add(new DrivenAgain(kind, true, setK, verdict, rated.coolantMarginK(), asItIs.run(), asItIs.stay()));
    }

    /** A car that leaves what the models cover has no row. */
    private void change(Kind kind, Resolved changed, double set) {
        try {
            Plant other = Plant.of(changed);
            Driven driven = driven(other, RunFaults.NONE);
            DutyOutcome outcome =
                    DutyRater.outcome(other, duty, Optional.of(driven.run())).asSureAs(expected, rated);
            rows.add(new DrivenAgain(
                    kind,
                    false,
                    set,
                    judge.apply(changed, outcome),
                    outcome.coolantMarginK(),
                    driven.run(),
                    driven.stay()));
        } catch (OutOfRangeException beyond) {
            return;
        }
    }

    private void breakDown(Kind kind, RunFaults faults) {
        try {
            Driven driven = driven(plant, faults);
            DutyOutcome outcome = rated.broken(
                    driven.coolantK() - asItIs.coolantK(),
                    driven.boilingK() - asItIs.boilingK(),
                    driven.oilK() - asItIs.oilK(),
                    driven.run());
            rows.add(new DrivenAgain(
                    kind,
                    false,
                    setK,
                    judge.apply(car, outcome),
                    outcome.coolantMarginK(),
                    driven.run(),
                    driven.stay()));
        } catch (OutOfRangeException beyond) {
            return;
        }
    }

    private Driven driven(Plant with, RunFaults faults) {
        RunSettings settings = SETTINGS.with(faults);
        return new Driven(car, RunSolver.run(with, duty, settings), stay.map(s -> RunSolver.run(with, s, settings)));
    }

    /** @return half an hour where the duty idles */
    private static Duty stay(Duty duty) {
        OperatingPoint at =
                duty.points().stream().filter(OperatingPoint::idles).findFirst().orElseThrow();
        Schedule held = new Schedule(
                duty.schedule().orElseThrow().startCoolantK(), List.of(new Schedule.Phase(at.id(), STAY_S)));
        return new Duty(duty.id(), duty.label(), duty.points(), Optional.of(held), duty.source());
    }
}
