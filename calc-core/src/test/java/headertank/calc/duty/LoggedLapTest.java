package headertank.calc.duty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.duty.LoggedLap.Sample;
import headertank.calc.quantity.InputException;
import headertank.calc.quantity.Physics;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Logs made up here, so that what must come out is known. */
class LoggedLapTest {

    @Test
    void aLapBecomesItsStraightsItsCornersAndTheQueueBeforeIt() {
        List<Sample> log = new ArrayList<>();
        hold(log, 30, 0, 0.15, 0.01);
        for (int lap = 0; lap < 3; lap++) {
            hold(log, 14, 180 / 3.6, 0.92, 0.95);
            hold(log, 9, 80 / 3.6, 0.7, 0.0);
            hold(log, 7, 90 / 3.6, 0.75, 0.4);
        }
        Duty duty = reduce(log);
        assertThat(duty.points()).extracting(OperatingPoint::id).containsExactly("idle", "pull-180", "along-60");
        assertThat(duty.judged()).isEqualTo(Duty.Judged.RUN_AND_IDLE);
        Demand.Mix along = (Demand.Mix) duty.point("along-60").demand();
        assertThat(along.modes()).hasSize(2);
        assertThat(along.modes().get(0).powerShare()).isZero();
        assertThat(along.modes().get(0).timeShare()).isCloseTo(9.0 / 16, within(0.01));
        assertThat(duty.schedule().orElseThrow().phases())
                .extracting(Schedule.Phase::pointId)
                .containsExactly("idle", "pull-180", "along-60", "pull-180", "along-60", "pull-180", "along-60");
        assertThat(duty.schedule().orElseThrow().phases().get(1).seconds()).isCloseTo(14, within(1e-6));
    }

    @Test
    void timeIsKeptExactlyAndMeanPowerWithinItsTolerance() {
        for (long seed = 1; seed <= 200; seed++) {
            List<Sample> log = wild(new Random(seed));
            Duty duty = reduce(log);
            double length = log.get(log.size() - 1).timeS() - log.get(0).timeS();
            assertThat(duty.schedule().orElseThrow().lengthS())
                    .as("seed " + seed)
                    .isCloseTo(length, within(1e-9 * length));
            assertThat(meanPowerShare(duty))
                    .as("seed " + seed)
                    .isCloseTo(meanPowerShare(log), within(LoggedLap.POWER_TOLERANCE));
        }
    }

    @Test
    void itIsADutyThatAFileCanHold() {
        for (long seed = 1; seed <= 50; seed++) {
            Duty duty = reduce(wild(new Random(seed)));
            Duty back = ScheduleCsv.parse(ScheduleCsv.write(duty));
            assertThat(back.points()).as("seed " + seed).hasSameSizeAs(duty.points());
            assertThat(meanPowerShare(back)).as("seed " + seed).isCloseTo(meanPowerShare(duty), within(1e-9));
        }
    }

    @Test
    void aBlinkOfAnotherKindMakesNoStretch() {
        List<Sample> log = new ArrayList<>();
        hold(log, 20, 40, 0.9, 0.9);
        hold(log, 0.3, 40, 0.8, 0.0);
        hold(log, 20, 40, 0.9, 0.9);
        Duty duty = reduce(log);
        assertThat(duty.points()).hasSize(1);
        assertThat(duty.schedule().orElseThrow().phases()).hasSize(1);
    }

    @Test
    void anEngineThatStandsIsOff() {
        List<Sample> log = new ArrayList<>();
        hold(log, 20, 20, 0.5, 0.3);
        hold(log, 60, 0, 0, 0);
        assertThat(reduce(log).point("off").engineOff()).isTrue();
        List<Sample> dead = new ArrayList<>();
        hold(dead, 60, 0, 0, 0);
        assertThatThrownBy(() -> reduce(dead))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("engineSpeedShare");
    }

    @Test
    void everyFaultIsNamedWithItsSampleAndRange() {
        List<Sample> log = new ArrayList<>();
        hold(log, 20, 20, 0.5, 0.3);
        log.set(3, new Sample(log.get(3).timeS(), 120, 0.5, 0.3));
        log.set(5, new Sample(log.get(4).timeS(), 20, 1.4, Double.NaN));
        assertThatThrownBy(() -> reduce(log)).isInstanceOfSatisfying(InputException.class, e -> assertThat(e.problems())
                .extracting(p -> p.line() + ", " + p.field() + " | " + p.allowed())
                .containsExactly(
                        "4, roadSpeedMPerS | duty-input.range[0, 90]",
                        "6, engineSpeedShare | duty-input.range[0, 1.2]",
                        "6, powerShare | duty-input.range[0, 1]",
                        "6, timeS | duty-input.above["
                                + CsvColumn.plain(log.get(4).timeS()) + "]"));
        assertThatThrownBy(() -> reduce(log.subList(0, 3)))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("duty-input.range[10, 200000]");
    }

    private static double meanPowerShare(List<Sample> log) {
        double sum = 0;
        for (int i = 0; i + 1 < log.size(); i++) {
            sum += (log.get(i + 1).timeS() - log.get(i).timeS()) * log.get(i).powerShare();
        }
        return sum / (log.get(log.size() - 1).timeS() - log.get(0).timeS());
    }

    private static Duty reduce(List<Sample> log) {
        return LoggedLap.reduce(
                "lap",
                "Lap",
                (doing, speed) -> doing + " " + Math.round(3.6 * speed),
                "made up",
                Physics.kelvin(80),
                log);
    }

    /** Mean over the schedule as the duty states it: idle and engine off count as no power. */
    private static double meanPowerShare(Duty duty) {
        double sum = 0;
        for (Schedule.Phase p : duty.schedule().orElseThrow().phases()) {
            if (duty.point(p.pointId()).demand() instanceof Demand.Mix mix) {
                for (Demand.Mode m : mix.modes()) {
                    sum += p.seconds() * m.timeShare() * m.powerShare();
                }
            }
        }
        return sum / duty.schedule().orElseThrow().lengthS();
    }

    private static void hold(List<Sample> log, double seconds, double speed, double engine, double power) {
        double start = log.isEmpty() ? 0 : log.get(log.size() - 1).timeS() + 0.1;
        for (int i = 0; i < Math.round(seconds / 0.1); i++) {
            log.add(new Sample(start + 0.1 * i, speed, engine, power));
        }
    }

    private static List<Sample> wild(Random random) {
        List<Sample> log = new ArrayList<>();
        hold(log, 2, 10, 0.5, 0.4);
        for (int i = 0; i < 60; i++) {
            boolean still = random.nextInt(4) == 0;
            double power = Math.max(0, 1.3 * random.nextDouble() - 0.3);
            hold(
                    log,
                    0.2 + 12 * random.nextDouble() * random.nextDouble(),
                    still ? 0 : 80 * random.nextDouble(),
                    still ? 0.15 * random.nextInt(2) : 0.3 + 0.8 * random.nextDouble(),
                    still ? 0.04 * random.nextDouble() : power);
        }
        return log;
    }
}
