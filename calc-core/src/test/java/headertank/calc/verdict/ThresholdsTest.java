package headertank.calc.verdict;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import headertank.calc.Builds;
import headertank.calc.Rater;
import headertank.calc.Rating;
import headertank.calc.carspec.BuildField;
import headertank.calc.duty.Duty;
import headertank.calc.duty.DutySource;
import headertank.calc.duty.StandardDuties;
import headertank.calc.quantity.InputException;
import headertank.calc.quantity.Physics;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A shop's own thresholds, figures and duties. */
class ThresholdsTest {

    private static final Rater RATER = Rater.standard();

    @Test
    void theUsualValuesAreWithinWhatIsAllowedAndWrittenAsNothing() {
        for (Threshold t : Threshold.values()) {
            assertThat(t.allowed().contains(t.standard())).as(t.name()).isTrue();
        }
        assertThat(Thresholds.STANDARD.moved()).isEmpty();
        assertThat(new StandardPolicy().version()).isEqualTo("1");
    }

    @Test
    void whatWasMovedReadsBack() {
        Thresholds own = Thresholds.of(Map.of(Threshold.GO_PROBABILITY, 0.02, Threshold.GO_MARGIN_K, 12.5));
        assertThat(own.moved()).isEqualTo("GO_PROBABILITY=0.02 GO_MARGIN_K=12.5");
        Thresholds back = Thresholds.read(own.moved());
        for (Threshold t : Threshold.values()) {
            assertThat(back.value(t)).isEqualTo(own.value(t));
        }
        assertThat(Thresholds.read("").moved()).isEmpty();
    }

    @Test
    void everyFaultIsNamedAtOnce() {
        assertThatThrownBy(
                        () -> Thresholds.of(Map.of(Threshold.GO_PROBABILITY, 0.5, Threshold.GO_BOILING_K, Double.NaN)))
                .isInstanceOfSatisfying(InputException.class, e -> assertThat(e.problems())
                        .extracting(p -> p.field() + " " + p.allowed())
                        .containsExactly(
                                "GO_PROBABILITY input.range[0.00500000 -, 0.150000 -]",
                                "GO_BOILING_K input.range[10.0000 K, 30.0000 K]"));
        assertThatThrownBy(() ->
                        Thresholds.of(Map.of(Threshold.GO_PROBABILITY, 0.15, Threshold.CONDITIONS_PROBABILITY, 0.10)))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("GO_PROBABILITY");
    }

    @Test
    void aStricterShopRefusesWhatAnotherLetsGo() {
        Rating usual = RATER.preview(Builds.road(), List.of(StandardDuties.STREET));
        double margin = usual.duties().get(0).outcome().coolantMarginK();
        double above = Math.min(30, Math.max(5, margin + 1));
        Rater strict = RATER.with(new StandardPolicy(Thresholds.of(Map.of(Threshold.GO_MARGIN_K, above))));
        Rating own = strict.preview(Builds.road(), List.of(StandardDuties.STREET));
        assertThat(coolant(usual)).isEqualTo(margin >= 10 ? Verdict.GO : Verdict.GO_WITH_CONDITIONS);
        assertThat(coolant(own)).isEqualTo(margin >= above ? Verdict.GO : Verdict.GO_WITH_CONDITIONS);
        assertThat(own.plugIns())
                .anyMatch(p -> p.id().equals("standard-policy") && p.version().equals("1+GO_MARGIN_K=" + above));
        assertThat(own.plugIns())
                .filteredOn(p -> p.kind().equals("VerdictPolicy"))
                .hasSize(1);
    }

    @Test
    void aShopsFigureFillsAGapAndYieldsToWhatTheCarStates() {
        double limit = Physics.kelvin(102);
        Rater shop = RATER.with(Map.of(BuildField.COOLANT_LIMIT, limit));
        assertThat(shop.resolve(Builds.road()
                                .change()
                                .unknown(BuildField.COOLANT_LIMIT)
                                .build())
                        .value(BuildField.COOLANT_LIMIT))
                .isEqualTo(limit);
        var stated = Builds.road()
                .change()
                .set(BuildField.COOLANT_LIMIT, headertank.calc.quantity.Stated.measured(Physics.kelvin(118)))
                .build();
        assertThat(shop.resolve(stated).value(BuildField.COOLANT_LIMIT)).isEqualTo(Physics.kelvin(118));
        assertThat(shop.preview(stated, List.of(StandardDuties.STREET)).plugIns())
                .anyMatch(p -> p.id().equals("shop-figures") && p.version().equals("limit.coolantK=" + limit));
        assertThatThrownBy(() -> RATER.with(Map.of(BuildField.COOLANT_LIMIT, 20.0)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("limit.coolantK");
    }

    @Test
    void onlyASourceWhoseDutyIsAskedForIsNamed() {
        Duty own = new Duty("own", "Own", StandardDuties.TRACK.points(), Optional.empty(), "test");
        Rater shop = RATER.with(new One(own));
        assertThat(shop.preview(Builds.road(), List.of(own)).plugIns())
                .filteredOn(p -> p.kind().equals("DutySource"))
                .extracting(p -> p.id())
                .containsExactly("one");
        assertThat(shop.preview(Builds.road(), List.of(StandardDuties.STREET)).plugIns())
                .filteredOn(p -> p.kind().equals("DutySource"))
                .extracting(p -> p.id())
                .containsExactly("standard-duties");
    }

    private static Verdict coolant(Rating rating) {
        return rating.duties().get(0).findings().stream()
                .filter(f -> f.code() == Finding.Code.COOLANT_MARGIN)
                .findFirst()
                .orElseThrow()
                .verdict();
    }

    private record One(Duty duty) implements DutySource {
        @Override
        public String id() {
            return "one";
        }

        @Override
        public String version() {
            return "1";
        }

        @Override
        public String source() {
            return "test";
        }

        @Override
        public List<Duty> duties() {
            return List.of(duty);
        }
    }
}
