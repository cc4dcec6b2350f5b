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
                run.peakCoolantK(),
                run.peakCoolantAtS(),
                run.peakOilK(),
                run.trace().stream().mapToDouble(Sample::gaugeK).max().orElse(Double.NaN),
                run.lowestBoilingMarginK(),
                run.secondsAboveLimit(),
                moment(run.firstAboveLimitS()),
                run.batteryAmpereHours(),
                run.fanStarts(),
                run.energyErrorShare(),
                Optional.of(run.settled()),
                Optional.of(run.window()),
                Optional.of(run.current()),
                Optional.of(run.hood()),
                run.sensors(),
                run.phases().stream()
                        .map(p -> new StoredRun.Phase(duty.point(p.pointId()).label(), p))
                        .toList(),
                Optional.of(run.numerics()),
                curves(Thinning.forAll(run.trace())));
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
