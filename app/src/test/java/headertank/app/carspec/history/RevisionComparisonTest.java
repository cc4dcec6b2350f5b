package headertank.app.carspec.history;

import static headertank.calc.quantity.Provenance.ADVERTISED;
import static headertank.calc.quantity.Provenance.DATASHEET;
import static headertank.calc.quantity.Provenance.GUESSED;
import static headertank.calc.quantity.Provenance.MEASURED;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headertank.app.carspec.Spec;
import headertank.app.carspec.SpecBuilder;
import headertank.app.carspec.Texts;
import headertank.app.field.FieldText;
import headertank.calc.Rater;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.carspec.FieldGroup;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Degrees per change. */
class RevisionComparisonTest {

    private final Rater rater = Rater.standard();
    private final FieldText text = Texts.metric(rater);
    private final RevisionComparison comparison =
            new RevisionComparison(text, new Differences(text, new StandIns(() -> rater, text)));

    private final Spec before = SpecBuilder.of(CarClass.DRIFT, "drift", "track")
            .set(BuildField.ENGINE_POWER, "300 kW", GUESSED)
            .set(BuildField.FAN_CURRENT, "25 A", MEASURED)
            .set(BuildField.FAN_FLOW, "1900 cfm", DATASHEET)
            .spec();

    @Test
    void theSharesSumToTheDifferenceAndStandCostliestFirst() {
        Spec after = SpecBuilder.from(before)
                .set(BuildField.FAN_CURRENT, "10 A", MEASURED)
                .set(BuildField.FAN_FLOW, "2500 cfm", ADVERTISED)
                .seen(BuildField.FAN_MOUNTING, "PUSHING")
                .set(BuildField.CORE_BLOCKED, "25 %", MEASURED)
                .spec();
        List<RevisionComparison.DutyCost> costs = comparison.between(before, after, rater);
        assertThat(costs).extracting(RevisionComparison.DutyCost::dutyId).containsExactly("drift", "track");
        for (RevisionComparison.DutyCost c : costs) {
            assertThat(c.parts().stream()
                            .mapToDouble(RevisionComparison.PartCost::shareK)
                            .sum())
                    .isCloseTo(difference(c), within(0.2));
            assertThat(c.parts()).isSortedAccordingTo(Comparator.comparingDouble(RevisionComparison.PartCost::shareK));
            assertThat(difference(c)).isNegative();
            assertThat(c.parts())
                    .allSatisfy(e -> assertThat(e.barX() + e.barWidth()).isBetween(0.0, 200.0));
        }
        assertThat(costs.get(0).cautions()).contains("runs");
        assertThat(costs.get(1).cautions()).doesNotContain("runs");
    }

    @Test
    void fieldsOfOnePartAreOneRowThatOpensIntoThem() {
        Spec after = SpecBuilder.from(before)
                .set(BuildField.FAN_CURRENT, "10 A", MEASURED)
                .set(BuildField.FAN_FLOW, "900 cfm", DATASHEET)
                .set(BuildField.CORE_BLOCKED, "25 %", MEASURED)
                .spec();
        RevisionComparison.DutyCost drift =
                comparison.between(before, after, rater).get(0);
        assertThat(drift.parts())
                .extracting(RevisionComparison.PartCost::part)
                .containsExactlyInAnyOrder("FAN", "RADIATOR");
        RevisionComparison.PartCost fans = drift.parts().stream()
                .filter(p -> p.part().equals("FAN"))
                .findFirst()
                .orElseThrow();
        assertThat(fans.label()).isEqualTo(text.group(FieldGroup.FAN));
        assertThat(fans.lines())
                .extracting(Differences.Line::key)
                .containsExactlyInAnyOrder(BuildField.FAN_CURRENT.key(), BuildField.FAN_FLOW.key());
        assertThat(fans.effects().stream()
                        .mapToDouble(RevisionComparison.Effect::shareK)
                        .sum())
                .isCloseTo(fans.shareK(), within(1e-9));
        assertThat(fans.costs()).isTrue();
        assertThat(fans.undoneK()).as("what a hand gains").isPositive();
    }

    @Test
    void aValueThatBecomesKnownNamesTheAssumptionThatItReplaced() {
        Spec after = SpecBuilder.from(before)
                .set(BuildField.CORE_BLOCKED, "25 %", MEASURED)
                .spec();
        Differences.Line line = new Differences(text, new StandIns(() -> rater, text))
                .between(before, after).stream()
                        .filter(l -> l.key().equals(BuildField.CORE_BLOCKED.key()))
                        .findFirst()
                        .orElseThrow();
        assertThat(line.before()).isEmpty();
        assertThat(line.beforeStandIn())
                .isEqualTo(text.show(
                        BuildField.CORE_BLOCKED, rater.resolve(before.build()).value(BuildField.CORE_BLOCKED)))
                .isNotEmpty();
        assertThat(line.afterStandIn()).isEmpty();
    }

    @Test
    void aBetterSourceForTheSameValueChangesNoMarginButIsNamed() {
        Spec after = SpecBuilder.from(before)
                .set(BuildField.ENGINE_POWER, "300 kW", MEASURED)
                .spec();
        RevisionComparison.DutyCost cost =
                comparison.between(before, after, rater).get(0);
        assertThat(difference(cost)).isZero();
        assertThat(cost.parts()).isEmpty();
        assertThat(cost.withoutEffect()).containsExactly("Rated power");
    }

    @Test
    void aClaimThatBecomesAMeasurementDoesChangeTheMargin() {
        Spec claimed = SpecBuilder.from(before)
                .set(BuildField.ENGINE_POWER, "300 kW", ADVERTISED)
                .spec();
        assertThat(comparison.between(before, claimed, rater).get(0).parts()).hasSize(1);
    }

    @Test
    void tooManyDifferencesAreNotToldApart() {
        SpecBuilder much = SpecBuilder.of(CarClass.OLD_STREET, "street");
        for (BuildField f : BuildField.values()) {
            if (f.isChoice() && !f.options().isEmpty() && f != BuildField.ENGINE_CLASS && f != BuildField.FUEL) {
                much.seen(f, f.options().get(0));
            }
        }
        much.set(BuildField.CORE_WIDTH, "500 mm", MEASURED)
                .set(BuildField.CORE_HEIGHT, "500 mm", MEASURED)
                .set(BuildField.CORE_DEPTH, "50 mm", MEASURED);
        RevisionComparison.DutyCost cost =
                comparison.between(before, much.spec(), rater).get(0);
        assertThat(cost.problem()).isNotEmpty();
        assertThat(cost.parts()).isEmpty();
    }

    private static double difference(RevisionComparison.DutyCost cost) {
        return cost.afterK() - cost.beforeK();
    }
}
