package headertank.calc.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.Builds;
import headertank.calc.Rater;
import headertank.calc.Rating;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.choice.AirExit;
import headertank.calc.duty.StandardDuties;
import headertank.calc.quantity.Entry;
import headertank.calc.quantity.Stated;
import headertank.calc.result.Improvement;
import headertank.calc.result.Plan;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class AdviceTest {

    private static final Rater RATER = Rater.standard();

    @Test
    void improvementsAreRankedByWhatTheyBuyWhereTheCarNeedsItMost() {
        List<Improvement> found = rate(Builds.drift()).improvements();
        assertThat(found).isNotEmpty().hasSizeLessThanOrEqualTo(6);
        assertThat(found).isSortedAccordingTo((a, b) -> Double.compare(b.gainK("track"), a.gainK("track")));
        assertThat(found).allSatisfy(i -> assertThat(i.gainK("track")).isGreaterThanOrEqualTo(Advice.LEAST_K));
    }

    /** Independent prototype of the same equations: a hood vent is worth 9.0 K on the track. */
    @Test
    void aGainIsWhatRatingTheChangedCarGives() {
        Improvement vent = rate(Builds.drift()).improvements().stream()
                .filter(i -> i.id().equals("hood-vent"))
                .findFirst()
                .orElseThrow();
        Build vented = Builds.drift()
                .change()
                .seen(BuildField.AIR_EXIT, AirExit.HOOD_VENT)
                .set(BuildField.AIR_EXIT_AREA, Stated.measured(0.26))
                .build();
        double gain = RATER.marginK(vented, StandardDuties.TRACK) - RATER.marginK(Builds.drift(), StandardDuties.TRACK);
        assertThat(vent.gainK("track")).isCloseTo(gain, within(1e-6));
        assertThat(gain).isCloseTo(9.0, within(1.5));
    }

    /** What follows from a value that was assumed before may move with it, so a plan gives nearly what was promised. */
    @Test
    void aPlanThatIsTypedInGivesNearlyWhatItsImprovementPromises() {
        for (Build build : List.of(Builds.drift(), Build.of(CarClass.TRACK))) {
            double now = RATER.marginK(build, StandardDuties.TRACK);
            for (Improvement i : rate(build).improvements()) {
                Plan plan = RATER.plan(build, i.id()).orElseThrow();
                Map<BuildField, Entry> entries = new EnumMap<>(BuildField.class);
                entries.putAll(build.entries());
                entries.putAll(plan.entries());
                double gain = RATER.marginK(new Build(build.carClass(), entries), StandardDuties.TRACK) - now;
                assertThat(plan.label()).isEqualTo(i.label());
                assertThat(gain).as(i.id()).isCloseTo(i.gainK("track"), within(0.25 * i.gainK("track") + 0.3));
            }
        }
        assertThat(RATER.plan(Builds.drift(), "no-such-change")).isEmpty();
    }

    @Test
    void whatIsAlreadySoIsNotAdvised() {
        Build vented = Builds.drift()
                .change()
                .seen(BuildField.AIR_EXIT, AirExit.HOOD_VENT)
                .build();
        assertThat(rate(vented).improvements()).extracting(Improvement::id).doesNotContain("hood-vent", "fans-pull");
    }

    @Test
    void aPreviewAdvisesNothing() {
        assertThat(RATER.preview(Builds.drift(), List.of(StandardDuties.TRACK)).improvements())
                .isEmpty();
    }

    private static Rating rate(Build build) {
        return RATER.rate(build, List.of(StandardDuties.TRACK, StandardDuties.STREET), 4);
    }
}
