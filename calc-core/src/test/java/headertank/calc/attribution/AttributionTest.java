package headertank.calc.attribution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.Builds;
import headertank.calc.Rater;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.carspec.Change;
import headertank.calc.carspec.FieldGroup;
import headertank.calc.choice.AirExit;
import headertank.calc.choice.BypassState;
import headertank.calc.choice.FanControlKind;
import headertank.calc.choice.FanMounting;
import headertank.calc.choice.ThermostatFitting;
import headertank.calc.duty.StandardDuties;
import headertank.calc.quantity.Stated;
import headertank.calc.result.Attribution;
import java.util.Arrays;
import java.util.List;
import java.util.function.LongToDoubleFunction;
import org.junit.jupiter.api.Test;

class AttributionTest {

    private static final Rater RATER = Rater.standard();

    @Test
    void sharesOfAnAdditiveFunctionAreItsTerms() {
        double[] shares = Shapley.shares(3, m -> (m & 1) * 2 + (m >> 1 & 1) * -5 + (m >> 2 & 1) * 7, 1, 1);
        assertThat(shares).containsExactly(new double[] {2, -5, 7}, within(1e-12));
    }

    /** The glove game: one left glove, two right ones; shares 2/3, 1/6, 1/6 (game theory textbooks, from memory). */
    @Test
    void sharesOfTheGloveGame() {
        LongToDoubleFunction pair = mask -> (mask & 1) != 0 && (mask & 6) != 0 ? 1 : 0;
        assertThat(Shapley.shares(3, pair, 1, 1))
                .containsExactly(new double[] {2 / 3.0, 1 / 6.0, 1 / 6.0}, within(1e-12));
    }

    @Test
    void sampledSharesSumToTheDifferenceAndComeCloseToTheExactOnes() {
        LongToDoubleFunction f = mask -> Math.sqrt(Long.bitCount(mask & 0x155)) - 0.3 * Long.bitCount(mask & 0x0aa);
        double[] sampled = Shapley.shares(9, f, 60, 5);
        assertThat(Arrays.stream(sampled).sum()).isCloseTo(f.applyAsDouble(0x1ff), within(1e-9));
        for (int i = 0; i < 9; i++) {
            boolean even = (0x155 & 1 << i) != 0;
            assertThat(sampled[i]).isCloseTo(even ? Math.sqrt(5) / 5 : -0.3, within(0.06));
        }
    }

    @Test
    void changesOfACarSumToItsDifference() {
        Build before = Builds.drift();
        Build after = before.change()
                .seen(BuildField.FAN_MOUNTING, FanMounting.PUSHING)
                .seen(BuildField.AIR_EXIT, AirExit.HOOD_VENT)
                .set(BuildField.AIR_EXIT_AREA, Stated.measured(0.26))
                .set(BuildField.CORE_WIDTH, Stated.measured(0.75))
                .build();
        Attribution a = RATER.compare(before, after, StandardDuties.TRACK);
        assertThat(a.exact()).isTrue();
        assertThat(a.effects().stream().mapToDouble(Attribution.Effect::shareK).sum())
                .isCloseTo(a.afterK() - a.beforeK(), within(1e-9));
        assertThat(effect(a, "fan.mounting").shareK()).isNegative();
        assertThat(effect(a, "air.exit").shareK()).isPositive();
        assertThat(effect(a, "radiator.coreWidthM").aloneK()).isPositive();
        assertThat(a.effects()).isSortedAccordingTo((x, y) -> Double.compare(x.shareK(), y.shareK()));
    }

    @Test
    void fieldsOfOnePartChangeTogetherAndThePartsSumToTheDifference() {
        Build before = Builds.drift();
        Build after = before.change()
                .set(BuildField.FAN_FLOW, Stated.measured(0.55))
                .set(BuildField.FAN_CURRENT, Stated.measured(14))
                .seen(BuildField.FAN_MOUNTING, FanMounting.PUSHING)
                .set(BuildField.CORE_WIDTH, Stated.measured(0.75))
                .set(BuildField.AMBIENT, Stated.measured(306.15))
                .set(BuildField.ALTITUDE, Stated.measured(400))
                .build();
        Attribution a = RATER.compare(before, after, StandardDuties.TRACK);
        assertThat(a.parts())
                .extracting(p -> p.part().map(Enum::name).orElse("none"), p -> p.effects()
                        .size())
                .containsExactlyInAnyOrder(tuple("FAN", 3), tuple("RADIATOR", 1), tuple("none", 1), tuple("none", 1));
        assertThat(a.parts().stream()
                        .mapToDouble(Attribution.PartEffect::shareK)
                        .sum())
                .isCloseTo(a.afterK() - a.beforeK(), within(1e-9));
        Attribution.PartEffect fans = a.parts().get(0);
        assertThat(fans.part()).contains(FieldGroup.FAN);
        assertThat(fans.effects().stream()
                        .mapToDouble(Attribution.Effect::shareK)
                        .sum())
                .isCloseTo(fans.shareK(), within(1e-9));
        Build back = after;
        for (Attribution.Effect e : fans.effects()) {
            back = e.change().apply(back, before);
        }
        assertThat(fans.undoneK())
                .as("what a hand gains by putting the old fans back")
                .isPositive()
                .isCloseTo(RATER.marginK(back, StandardDuties.TRACK) - a.afterK(), within(1e-9));
        assertThat(fans.aloneK()).isNegative();
    }

    @Test
    void aThermostatThatGoesTakesItsBypassWithIt() {
        Build before = Builds.road()
                .change()
                .seen(BuildField.THERMOSTAT, ThermostatFitting.FITTED)
                .build();
        Build after = before.change()
                .seen(BuildField.THERMOSTAT, ThermostatFitting.REMOVED)
                .seen(BuildField.THERMOSTAT_BYPASS, BypassState.BLOCKED)
                .unknown(BuildField.THERMOSTAT_OPENING)
                .set(BuildField.CORE_WIDTH, Stated.measured(0.75))
                .build();
        Attribution a = RATER.compare(before, after, StandardDuties.STREET);
        assertThat(a.effects())
                .extracting(e -> e.change().key())
                .containsExactlyInAnyOrder("thermostat.state", "radiator.coreWidthM");
        Change removed = effect(a, "thermostat.state").change();
        assertThat(removed.with())
                .extracting(f -> f.field())
                .containsExactly(BuildField.THERMOSTAT_OPENING, BuildField.THERMOSTAT_BYPASS);
        Build alone = removed.apply(before, after);
        assertThat(effect(a, "thermostat.state").aloneK())
                .isCloseTo(
                        RATER.marginK(alone, StandardDuties.STREET) - RATER.marginK(before, StandardDuties.STREET),
                        within(1e-12));
        assertThat(alone.entry(BuildField.CORE_WIDTH)).isEqualTo(before.entry(BuildField.CORE_WIDTH));
        assertThat(a.effects().stream().mapToDouble(Attribution.Effect::shareK).sum())
                .isCloseTo(a.afterK() - a.beforeK(), within(1e-9));
    }

    @Test
    void aBypassThatChangesByItselfStandsAlone() {
        Build before = Builds.road()
                .change()
                .seen(BuildField.THERMOSTAT, ThermostatFitting.FITTED)
                .build();
        Build after = before.change()
                .seen(BuildField.THERMOSTAT_BYPASS, BypassState.OPEN)
                .set(BuildField.THERMOSTAT_OPENING, Stated.measured(350))
                .build();
        assertThat(Change.between(before, after))
                .extracting(Change::key)
                .containsExactly("thermostat.openingK", "thermostat.bypass");
    }

    @Test
    void aFanTableIsOneChange() {
        Build before = table(80, 95);
        Build after = table(75, 88);
        List<Change> changes = Change.between(before, after);
        assertThat(changes).extracting(Change::key).containsExactly("fanControl.row1K");
        assertThat(changes.get(0).with()).extracting(f -> f.field()).containsExactly(BuildField.CONTROL_ROW_2_K);
        assertThat(changes.get(0).apply(before, after)).isEqualTo(after);
    }

    private static Build table(double from, double to) {
        return Builds.drift()
                .change()
                .seen(BuildField.CONTROL_KIND, FanControlKind.TABLE)
                .set(BuildField.CONTROL_ROW_1_K, Stated.measured(from + 273.15))
                .set(BuildField.CONTROL_ROW_1_DUTY, Stated.measured(0))
                .set(BuildField.CONTROL_ROW_2_K, Stated.measured(to + 273.15))
                .set(BuildField.CONTROL_ROW_2_DUTY, Stated.measured(1))
                .build();
    }

    @Test
    void nothingChangedCostsNothing() {
        Attribution a = RATER.compare(Builds.road(), Builds.road(), StandardDuties.STREET);
        assertThat(a.effects()).isEmpty();
        assertThat(a.afterK()).isEqualTo(a.beforeK());
    }

    @Test
    void theClassOfCarIsAChangeOfItsOwn() {
        Attribution a =
                RATER.compare(Build.of(CarClass.MODERN_STREET), Build.of(CarClass.OLD_STREET), StandardDuties.STREET);
        assertThat(a.effects()).hasSize(1);
        assertThat(a.effects().get(0).change().key()).isEqualTo(Change.CAR_CLASS);
    }

    private static Attribution.Effect effect(Attribution a, String key) {
        return a.effects().stream()
                .filter(e -> e.change().key().equals(key))
                .findFirst()
                .orElseThrow();
    }
}
