package headertank.calc.learning;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.calc.Builds;
import headertank.calc.Rater;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Learned;
import headertank.calc.carspec.Resolved;
import headertank.calc.duty.Duty;
import headertank.calc.duty.StandardDuties;
import headertank.calc.evidence.DriveLog;
import headertank.calc.evidence.Evidence;
import headertank.calc.evidence.Replay;
import headertank.calc.judged.DutyRater;
import headertank.calc.population.MeasuredCar;
import headertank.calc.quantity.Physics;
import headertank.calc.rating.Plant;
import headertank.calc.rating.PointRater;
import headertank.calc.result.Distribution;
import headertank.calc.uncertainty.LatinHypercube;
import headertank.calc.uncertainty.ModelSpread;
import headertank.calc.uncertainty.Unknowns;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/** Prints the tables of {@code docs/learning.md}; takes minutes, so it runs only when it is asked for. */
class LearningPageTest {

    private static final Rater RATER = Rater.standard();
    private static final List<List<String>> SETS = List.of(
            List.of("idle23", "idle46", "live13", "long3", "ufpe8"),
            List.of("idle3", "idle25", "live21", "drive9", "ufpe13"),
            List.of("idle30", "idle46", "live21", "ufpe8", "drive9"),
            List.of("idle23"));

    @Test
    @EnabledIfSystemProperty(named = "headertank.logs", matches = ".+")
    void aRealCar() throws Exception {
        Map<String, DriveLog> logs = new TreeMap<>();
        try (Stream<Path> files = Files.list(Path.of(System.getProperty("headertank.logs")))) {
            files.filter(f -> f.getFileName().toString().startsWith("measured-"))
                    .forEach(f -> logs.put(
                            f.getFileName().toString().replaceAll("measured-|\\.csv", ""), MeasuredLogs.in(f)));
        }
        Build car = MeasuredCar.build();
        print(
                "| learned from | strain | predicted: root mean square, K (40 to 80 C, share of the time) | median | 90 % |");
        print("|---|---|---|---|---|");
        print("| nothing | | " + predicted(RATER, car, logs, List.of()));
        for (List<String> set : SETS) {
            Learned learned = RATER.learn(car, set.stream().map(logs::get).toArray(Evidence[]::new));
            print("| " + String.join(", ", set) + String.format(Locale.ROOT, " | %.1f | ", learned.strain())
                    + predicted(RATER.knowing(learned), car, logs, set));
        }
        assertThat(logs).isNotEmpty();
    }

    private static String predicted(Rater rater, Build car, Map<String, DriveLog> logs, List<String> learnedFrom) {
        List<String> cells = new ArrayList<>();
        List<Double> left = new ArrayList<>();
        logs.forEach((name, log) -> {
            if (!learnedFrom.contains(name)) {
                Replay replay = rater.replay(car, log);
                left.add(replay.rootMeanSquareK());
                double share = crossing(replay, Replay.Moment::expectedK) / crossing(replay, Replay.Moment::readK);
                cells.add(name
                        + String.format(Locale.ROOT, " %.1f", replay.rootMeanSquareK())
                        + (Double.isNaN(share) ? "" : String.format(Locale.ROOT, " (%.2f)", share)));
            }
        });
        Distribution d = Distribution.of(left.stream().mapToDouble(v -> v).toArray());
        double[] sorted = left.stream().mapToDouble(v -> v).sorted().toArray();
        return String.join(", ", cells)
                + String.format(
                        Locale.ROOT, " | %.1f | %.1f |", d.median(), sorted[(int) Math.ceil(0.9 * sorted.length) - 1]);
    }

    /** @return time from 40 to 80 C where a log began colder [s] */
    private static double crossing(Replay replay, ToDoubleFunction<Replay.Moment> of) {
        double from = Double.NaN;
        for (Replay.Moment m : replay.moments()) {
            double k = of.applyAsDouble(m);
            if (Double.isNaN(from) && k >= Physics.kelvin(40)) {
                if (m == replay.moments().get(0)) {
                    return Double.NaN;
                }
                from = m.timeS();
            }
            if (k >= Physics.kelvin(80)) {
                return m.timeS() - from;
            }
        }
        return Double.NaN;
    }

    @Test
    @EnabledIfSystemProperty(named = "headertank.cars", matches = "\\d+")
    void inventedCars() {
        int cars = Integer.getInteger("headertank.cars");
        Build build = Builds.drift();
        Resolved expected = RATER.resolve(build);
        Unknowns unknowns = new Unknowns(expected);
        ModelSpread spread =
                ModelSpread.of(expected, PointRater.rate(Plant.of(expected), StandardDuties.STREET.point("hill")));
        double[][] drawn = LatinHypercube.standardNormal(
                cars,
                LongStream.range(0, unknowns.size()).map(i -> 9001 + 17 * i).toArray());
        List<Duty> duties = List.of(StandardDuties.DRIFT, StandardDuties.TRACK);
        double[][] before = new double[2][cars];
        double[][] after = new double[2][cars];
        double[][] off = new double[2][cars];
        int[] inside = new int[2];
        for (int i = 0; i < cars; i++) {
            Resolved values = unknowns.values(drawn[i]);
            Plant driven = unknowns.plant(values.with(BuildField.AMBIENT, SyntheticDrive.AMBIENT_K), drawn[i], spread);
            Plant truth = unknowns.plant(
                    values.with(BuildField.AMBIENT, expected.value(BuildField.AMBIENT)), drawn[i], spread);
            Learned learned = RATER.learn(build, SyntheticDrive.of(driven, 77 + i));
            for (int d = 0; d < 2; d++) {
                Duty duty = duties.get(d);
                double margin = DutyRater.finiteMarginK(truth, duty);
                Distribution prior = margin(RATER, build, duty);
                Distribution known = margin(RATER.knowing(learned), build, duty);
                before[d][i] = prior.high() - prior.low();
                after[d][i] = known.high() - known.low();
                off[d][i] = Math.abs(known.median() - margin);
                inside[d] += known.low() <= margin && margin <= known.high() ? 1 : 0;
            }
        }
        print("| duty | width before, K | width after, K (median) | median off, K | truth inside 5 to 95 % |");
        print("|---|---|---|---|---|");
        for (int d = 0; d < 2; d++) {
            print(String.format(
                    Locale.ROOT,
                    "| %s | %.1f | %.1f | %.1f | %d of %d |",
                    duties.get(d).id(),
                    median(before[d]),
                    median(after[d]),
                    median(off[d]),
                    inside[d],
                    cars));
            assertThat(median(after[d])).isLessThan(median(before[d]));
        }
    }

    /** How long learning takes: a log of 18 minutes with a row a second, and of two hours with ten. */
    @Test
    @EnabledIfSystemProperty(named = "headertank.speed", matches = "true")
    void speed() {
        Build build = Builds.drift();
        DriveLog short18 =
                SyntheticDrive.of(Plant.of(RATER.resolve(build).with(BuildField.AMBIENT, SyntheticDrive.AMBIENT_K)), 3);
        DriveLog long120 = tenTimesASecond(short18, 7200);
        RATER.learn(build, short18);
        print("| log | rows | seconds | processors |");
        print("|---|---|---|---|");
        for (DriveLog log : List.of(short18, long120)) {
            long from = System.nanoTime();
            RATER.learn(build, log);
            print(String.format(
                    Locale.ROOT,
                    "| %.0f min | %d | %.1f | %d |",
                    (log.rows().get(log.rows().size() - 1).timeS()
                                    - log.rows().get(0).timeS())
                            / 60,
                    log.rows().size(),
                    (System.nanoTime() - from) / 1e9,
                    Runtime.getRuntime().availableProcessors()));
        }
        assertThat(long120.rows()).hasSizeGreaterThan(70_000);
    }

    /** The same drive again and again, its cold start but once, ten rows a second. */
    private static DriveLog tenTimesASecond(DriveLog log, double seconds) {
        List<DriveLog.Row> rows = log.rows();
        int warm = rows.size() / 2;
        List<DriveLog.Row> all = new ArrayList<>();
        for (int i = 0; i < 10 * seconds; i++) {
            int second = i / 10;
            int at = second < rows.size() ? second : warm + (second - rows.size()) % (rows.size() - warm);
            DriveLog.Row r = rows.get(at);
            all.add(new DriveLog.Row(
                    i / 10.0, r.coolantK(), r.enginePerS(), r.manifoldPa(), r.intakeK(), r.roadMPerS()));
        }
        DriveLog repeated = new DriveLog(log.ambientK(), log.ambientSigmaK(), all);
        return repeated.driving(log.drove().orElseThrow());
    }

    private static Distribution margin(Rater rater, Build build, Duty duty) {
        return rater.rate(build, List.of(duty), 128)
                .duty(duty.id())
                .outcome()
                .marginSpread()
                .orElseThrow();
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }

    private static void print(String line) {
        System.out.println(line);
    }
}
