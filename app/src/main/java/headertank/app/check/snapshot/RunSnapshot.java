package headertank.app.check.snapshot;

import headertank.app.check.stored.StoredRun;
import headertank.calc.duty.Duty;
import headertank.calc.result.RunResult;
import headertank.calc.result.RunResult.Sample;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** Turns a run over time into what is stored of it. */
final class RunSnapshot {

    private RunSnapshot() {}

    /**
     * @param duty whose schedule was driven
     * @param run with a trace
     */
    static StoredRun of(Duty duty, RunResult run) {
        return new StoredRun(
                run.peaks().coolantK(),
                run.peaks().coolantAtS(),
                run.peaks().oilK(),
                run.trace().stream().mapToDouble(Sample::gaugeK).max().orElse(Double.NaN),
                run.peaks().lowestBoilingMarginK(),
                run.aboveLimit().seconds(),
                moment(run.aboveLimit().firstS()),
                run.charge().batteryAmpereHours(),
                run.fanStarts(),
                run.energy().errorShare(),
                Optional.of(settled(run.settled())),
                Optional.of(window(run.window())),
                Optional.of(current(run.current())),
                Optional.of(new StoredRun.Hood(
                        run.hood().peakAirK(),
                        run.hood().peakPanelK(),
                        run.hood().peakTouchK())),
                run.sensors().stream().map(RunSnapshot::sensor).toList(),
                run.phases().stream()
                        .map(p -> new StoredRun.Phase(duty.point(p.pointId()).label(), phase(p)))
                        .toList(),
                Optional.of(numerics(run.numerics())),
                curves(Thinning.forAll(run.trace())));
    }

    private static StoredRun.Settled settled(RunResult.Settled s) {
        return new StoredRun.Settled(s.coolantK(), s.swingK(), s.gaugeSwingK(), s.pointId());
    }

    static StoredRun.Window window(RunResult.Window w) {
        return new StoredRun.Window(w.secondsBelow(), w.secondsAbove());
    }

    static StoredRun.Current current(RunResult.Current c) {
        return new StoredRun.Current(c.peakFanA(), c.peakLoadA(), c.lowestVoltageV(), c.deficitMinutes());
    }

    private static StoredRun.SensorError sensor(RunResult.SensorError e) {
        return new StoredRun.SensorError(
                e.placement().name(),
                e.lowestErrorK(),
                e.lowestAtS(),
                e.secondsLow(),
                e.longestLowS(),
                e.standingErrorK(),
                e.standingSeconds(),
                e.standingLowSeconds());
    }

    private static StoredRun.PhaseSummary phase(RunResult.PhaseSummary p) {
        return new StoredRun.PhaseSummary(
                p.pointId(),
                p.startS(),
                p.seconds(),
                p.startCoolantK(),
                p.peakCoolantK(),
                p.endCoolantK(),
                p.peakOilK(),
                p.secondsAboveLimit(),
                p.fanAmpereHours());
    }

    private static StoredRun.Numerics numerics(RunResult.Numerics n) {
        return new StoredRun.Numerics(n.steps(), n.rejectedSteps(), n.evaluations(), n.events(), n.eventErrorK());
    }

    /** A moment that may never have come. */
    static Optional<Double> moment(double timeS) {
        return Double.isNaN(timeS) ? Optional.empty() : Optional.of(timeS);
    }

    private static StoredRun.Curves curves(List<Sample> kept) {
        return new StoredRun.Curves(
                column(kept, Sample::timeS, 10),
                column(kept, Sample::coolantK, 100),
                column(kept, Sample::headK, 100),
                column(kept, Sample::gaugeK, 100),
                column(kept, Sample::fanSensorK, 100),
                column(kept, Sample::oilK, 100),
                column(kept, Sample::radiatorK, 100),
                column(kept, Sample::underHoodK, 100),
                column(kept, Sample::fanDuty, 1000),
                column(kept, Sample::fanCurrentA, 10),
                column(kept, Sample::voltageV, 100),
                column(kept, Sample::roadSpeedMPerS, 100));
    }

    /** One quantity, rounded to so many parts of its unit. */
    static List<Double> column(List<Sample> kept, ToDoubleFunction<Sample> value, double parts) {
        return kept.stream()
                .map(s -> Math.rint(value.applyAsDouble(s) * parts) / parts)
                .toList();
    }
}
