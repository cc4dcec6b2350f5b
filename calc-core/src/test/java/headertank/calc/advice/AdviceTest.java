package headertank.calc.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.Builds;
import headertank.calc.Rater;
import headertank.calc.Rating;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.choice.AirExit;
import headertank.calc.duty.StandardDuties;
import headertank.calc.quantity.Stated;
import headertank.calc.result.Improvement;
import java.util.List;
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
