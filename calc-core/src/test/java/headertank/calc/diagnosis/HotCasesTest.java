package headertank.calc.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.calc.Rater;
import headertank.calc.cause.Inquiry;
import headertank.calc.cause.Observation;
import headertank.calc.cause.Ranking;
import headertank.calc.cause.Sighting;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * Cars that came back hot, with the truth, asked at the door. {@code -Dheadertank.causes.cases=300} prints the tables of
 * {@code docs/causes.md}; the few of the build can only tell a gross error.
 */
class HotCasesTest {

    private static final long SEED = 14L;
    private static final int MOST_TESTS = 6;
    private static final int CASES = Integer.getInteger("headertank.causes.cases", 20);
    private static final boolean MANY = CASES >= 300;

    /** The bar is one of many cases; few of them scatter about it. */
    private static final double FIRST_THREE = MANY ? 0.8 : 0.6;

    private static final Rater RATER = Rater.standard();

    @Test
    void theTruthIsAmongTheFirstThreeAfterWordsAndOneReading() {
        Score score = new Score();
        List<HotCase> cases = HotCase.cases(RATER, CASES, true, SEED);
        cases.forEach(c -> score.add(c, RATER.causes(c.build, c.seen)));
        score.print("words and one reading");
        assertThat(score.first(3)).as("share in the first three, seed " + SEED).isGreaterThanOrEqualTo(FIRST_THREE);
    }

    @Test
    void wordsAloneRankAlready() {
        Score score = new Score();
        HotCase.cases(RATER, CASES, false, SEED).forEach(c -> score.add(c, RATER.causes(c.build, c.seen)));
        score.print("words alone");
        assertThat(score.first(3)).as("share in the first three, seed " + SEED).isGreaterThanOrEqualTo(0.5);
    }

    @Test
    void theSuggestedTestsSettleIt() {
        List<Integer> tests = new ArrayList<>();
        int right = 0;
        int settled = 0;
        for (HotCase c : HotCase.cases(RATER, MANY ? CASES : CASES / 2, true, SEED + 1)) {
            Sighting seen = c.seen;
            Ranking ranking = RATER.causes(c.build, seen);
            int done = 0;
            while (!ranking.settled() && done < MOST_TESTS && !ranking.next().isEmpty()) {
                Inquiry next = ranking.next().get(0).test();
                seen = with(seen, c.answer(next));
                ranking = RATER.causes(c.build, seen);
                done++;
            }
            tests.add(ranking.settled() ? done : MOST_TESTS + 1);
            if (ranking.settled()) {
                settled++;
                right += ranking.answers().get(0).ids().contains(c.truth.id()) ? 1 : 0;
            }
        }
        tests.sort(null);
        int median = tests.get(tests.size() / 2);
        System.out.println(String.format(
                Locale.ROOT,
                "tests: median %d, settled within %d: %.2f, of those right %.2f",
                median,
                MOST_TESTS,
                settled / (double) tests.size(),
                right / (double) settled));
        if (MANY) {
            assertThat(median).as("median of tests, seed " + SEED).isLessThanOrEqualTo(2);
        }
        // Where 73 of 100 are settled, fewer than four of ten are so in one of a hundred draws.
        assertThat(settled / (double) tests.size()).as("settled, seed " + SEED).isGreaterThanOrEqualTo(0.4);
        assertThat(right / (double) settled).as("right when settled").isGreaterThanOrEqualTo(0.6);
    }

    private static Sighting with(Sighting seen, Observation more) {
        Set<Observation> all = EnumSet.of(more);
        all.addAll(seen.observed());
        return new Sighting(seen.duty(), seen.pointId(), seen.ambientK(), seen.shownK(), seen.elsewhere(), all);
    }

    /** How well rankings found the truth. */
    private static final class Score {
        private final List<Integer> places = new ArrayList<>();
        private final List<Integer> causes = new ArrayList<>();
        private final Map<String, List<Integer>> byCause = new TreeMap<>();
        private final List<double[]> believed = new ArrayList<>();
        private double members;

        void add(HotCase c, Ranking r) {
            int place = 0;
            while (!r.causes().get(place).id().equals(c.truth.id())) {
                place++;
            }
            int answer = 0;
            while (!r.answers().get(answer).ids().contains(c.truth.id())) {
                answer++;
            }
            places.add(answer);
            causes.add(place);
            byCause.computeIfAbsent(c.truth.id(), k -> new ArrayList<>()).add(place);
            believed.add(new double[] {r.causes().get(0).posterior(), place == 0 ? 1 : 0});
            members +=
                    r.answers().stream().limit(3).mapToInt(a -> a.ids().size()).sum() / 3.0;
        }

        double first(int n) {
            return share(places, n);
        }

        private static double share(List<Integer> places, int n) {
            return places.stream().filter(p -> p < n).count() / (double) places.size();
        }

        void print(String what) {
            System.out.println(String.format(
                    Locale.ROOT,
                    "%s: %d cases; answers of %.1f causes: first %.2f, first two %.2f, first three %.2f; causes one by one: first %.2f,"
                            + " first three %.2f, first five %.2f",
                    what,
                    places.size(),
                    members / places.size(),
                    first(1),
                    first(2),
                    first(3),
                    share(causes, 1),
                    share(causes, 3),
                    share(causes, 5)));
            if (MANY) {
                byCause.forEach((id, p) -> System.out.println(String.format(
                        Locale.ROOT,
                        "| %s | %d | %d | %d |",
                        id,
                        p.size(),
                        p.stream().filter(x -> x == 0).count(),
                        p.stream().filter(x -> x < 3).count())));
                for (double from = 0; from < 1; from += 0.2) {
                    double lower = from;
                    List<double[]> in = believed.stream()
                            .filter(b -> b[0] >= lower && b[0] < lower + 0.2)
                            .toList();
                    if (!in.isEmpty()) {
                        System.out.println(String.format(
                                Locale.ROOT,
                                "| %.0f to %.0f %% | %d | %.0f %% |",
                                100 * lower,
                                100 * lower + 20,
                                in.size(),
                                100
                                        * in.stream()
                                                .mapToDouble(b -> b[1])
                                                .average()
                                                .orElseThrow()));
                    }
                }
            }
        }
    }
}
