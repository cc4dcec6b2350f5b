package headertank.app.handover.item;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.app.check.Specs;
import headertank.app.check.snapshot.Snapshot;
import headertank.app.check.stored.CheckInput;
import headertank.app.check.stored.CheckResult;
import headertank.calc.Rater;
import headertank.calc.Rating;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.duty.StandardDuties;
import headertank.calc.quantity.Stated;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.springframework.context.support.ResourceBundleMessageSource;

/** Only what applies to a car is on its list. */
class CheckListTest {

    private static final Rater RATER = Rater.standard();

    @Test
    void aBeltIsOnTheListOnlyWithSomethingThatItDrives() {
        assertThat(keys(Specs.easy().seen(BuildField.PUMP_DRIVE, "ENGINE")))
                .contains("belt-run")
                .doesNotContain("pump-electric");
        assertThat(keys(Specs.easy().seen(BuildField.PUMP_DRIVE, "ELECTRIC")))
                .contains("pump-electric")
                .doesNotContain("belt-run");
        assertThat(keys(Specs.easy().seen(BuildField.PUMP_DRIVE, "ELECTRIC").seen(BuildField.FAN_DRIVE, "CLUTCH")))
                .contains("belt-run", "fan-clutch");
    }

    @Test
    void theWayAFanBlowsAndItsCurrentAreLookedAtOnlyWithElectricFans() {
        String[] electric = {"fan-direction", "fan-sensor", "fans-start", "fan-start-current", "fan-running-current"};
        assertThat(keys(Specs.easy().seen(BuildField.FAN_DRIVE, "ELECTRIC"))).contains(electric);
        assertThat(keys(Specs.easy().seen(BuildField.FAN_DRIVE, "CLUTCH"))).doesNotContain(electric);
        assertThat(keys(Specs.easy().seen(BuildField.FAN_DRIVE, "NONE")))
                .doesNotContain(electric)
                .doesNotContain("fan-free");
        assertThat(keys(Specs.easy().seen(BuildField.CONTROL_KIND, "ALWAYS_ON")))
                .contains("fan-running-current", "hot-run")
                .doesNotContain("fans-start", "fan-sensor", "hot-run-fans");
    }

    @Test
    void ventsFlapsCoolersAndAMissingThermostatAreOnTheListOnlyWhereTheyAre() {
        assertThat(keys(Specs.easy()
                        .seen(BuildField.AIR_EXIT, "HOOD_VENT")
                        .seen(BuildField.FAN_FLAPS, "YES")
                        .seen(BuildField.OIL_COOLER, "BOTH")
                        .seen(BuildField.CHARGE_COOLER, "YES")
                        .seen(BuildField.THERMOSTAT, "REMOVED")))
                .contains(
                        "hood-vent",
                        "shroud-flaps",
                        "oil-cooler-air",
                        "oil-cooler-coolant",
                        "front-coolers",
                        "thermostat-removed")
                .doesNotContain("thermostat-opens");
        assertThat(keys(Specs.easy()
                        .seen(BuildField.AIR_EXIT, "UNDER_CAR")
                        .seen(BuildField.FAN_FLAPS, "NO")
                        .seen(BuildField.OIL_COOLER, "NONE")
                        .seen(BuildField.CHARGE_COOLER, "NO")
                        .seen(BuildField.CONDENSER, "NO")
                        .seen(BuildField.THERMOSTAT, "FITTED")))
                .contains("thermostat-opens")
                .doesNotContain(
                        "hood-vent",
                        "shroud-flaps",
                        "oil-cooler-air",
                        "oil-cooler-coolant",
                        "front-coolers",
                        "thermostat-removed");
    }

    @Test
    void theSensorsPlaceIsNamedAndSaysWhenNobodyHasStatedIt() {
        CheckItem stated = item(Specs.easy().seen(BuildField.GAUGE_SENSOR, "TANK"), "gauge-sensor");
        assertThat(stated.token()).isEqualTo("TANK");
        assertThat(stated.assumed()).isFalse();
        assertThat(item(Specs.easy().unknown(BuildField.GAUGE_SENSOR), "gauge-sensor")
                        .assumed())
                .isTrue();
    }

    @Test
    void aRampStartsItsFansABandBelowItsSetPoint() {
        Build.Builder build = Specs.easy()
                .seen(BuildField.FAN_DRIVE, "ELECTRIC")
                .set(BuildField.CONTROL_SET, Stated.measured(363.15))
                .set(BuildField.CONTROL_BAND, Stated.measured(15));
        assertThat(item(build.seen(BuildField.CONTROL_KIND, "RAMP"), "fans-start")
                        .value())
                .isEqualTo(348.15);
        assertThat(item(build.seen(BuildField.CONTROL_KIND, "SWITCH"), "fans-start")
                        .value())
                .isEqualTo(363.15);
    }

    @Test
    void twoStepsStartAtTheLowOneAndATableAtItsFirstDuty() {
        Build.Builder build = Specs.easy()
                .seen(BuildField.FAN_DRIVE, "ELECTRIC")
                .set(BuildField.CONTROL_SET, Stated.measured(363.15));
        Build.Builder steps = build.build()
                .change()
                .seen(BuildField.CONTROL_KIND, "TWO_STEP")
                .set(BuildField.CONTROL_LOW_SET, Stated.measured(355.15));
        assertThat(item(steps, "fans-start").value()).isEqualTo(355.15);
        Build.Builder table = build.build()
                .change()
                .seen(BuildField.CONTROL_KIND, "TABLE")
                .set(BuildField.CONTROL_ROW_1_K, Stated.measured(351.15))
                .set(BuildField.CONTROL_ROW_1_DUTY, Stated.measured(0))
                .set(BuildField.CONTROL_ROW_2_K, Stated.measured(369.15))
                .set(BuildField.CONTROL_ROW_2_DUTY, Stated.measured(1));
        assertThat(item(table, "fans-start").value()).isEqualTo(351.15);
    }

    @Test
    void thePressureTestGoesUpToTheRatingAsItWasStated() {
        CheckItem test = item(Specs.easy().set(BuildField.CAP_PRESSURE, Stated.advertised(1.1e5)), "pressure-test");
        assertThat(test.value()).isEqualTo(1.1e5);
        assertThat(test.cautions()).contains(Caution.PRESSURE, Caution.HOT_SYSTEM);
        assertThat(Expectations.of(test, Map.of()).orElseThrow().high()).isLessThan(1.01 * 1.1e5);
        assertThat(keys(Specs.easy().set(BuildField.CAP_PRESSURE, Stated.measured(0))))
                .doesNotContain("pressure-test", "cap-test");
    }

    @Test
    void everyRiskyChoiceThatIsMoreThanARemarkIsAnItem() {
        Rating rating = rate(Specs.easy().seen(BuildField.THERMOSTAT, "REMOVED").build());
        CheckResult result = Snapshot.result(rating, RATER);
        List<String> expected = result.flags().stream()
                .filter(f -> f.weight() != CheckResult.Weight.REMARK)
                .map(f -> "flag-" + f.rule())
                .toList();
        assertThat(expected).isNotEmpty();
        assertThat(CheckList.of(Snapshot.input(rating, 1, 1), result))
                .extracting(CheckItem::key)
                .startsWith(expected.toArray(String[]::new));
    }

    @Test
    void keysAreUniqueAndTheirWordsExist() throws Exception {
        var messages = new ResourceBundleMessageSource();
        messages.setBasename("messages/handover");
        messages.setDefaultEncoding("UTF-8");
        for (ChecklistTask w : ChecklistTask.values()) {
            String start = "handover.item." + w.key();
            for (String part : List.of("", ".why", ".how")) {
                assertThat(messages.getMessage(start + part, new Object[] {"x"}, Locale.ENGLISH))
                        .isNotBlank();
            }
            if (w.quantity().isPresent()) {
                for (ReadingComparison.Verdict v :
                        List.of(ReadingComparison.Verdict.TOO_LOW, ReadingComparison.Verdict.TOO_HIGH)) {
                    assertThat(messages.getMessage("handover.means." + w.key() + "." + v, null, Locale.ENGLISH))
                            .isNotBlank();
                }
            }
        }
        for (Caution c : Caution.values()) {
            assertThat(messages.getMessage("handover.caution." + c, null, Locale.ENGLISH))
                    .isNotBlank();
        }
        assertThat(keys(Specs.easy())).doesNotHaveDuplicates();
    }

    private static CheckItem item(Build.Builder build, String key) {
        return list(build).stream().filter(i -> i.key().equals(key)).findFirst().orElseThrow();
    }

    private static List<String> keys(Build.Builder build) {
        return list(build).stream().map(CheckItem::key).toList();
    }

    private static List<CheckItem> list(Build.Builder build) {
        Rating rating = rate(build.build());
        CheckInput input = Snapshot.input(rating, 1, 1);
        return CheckList.of(input, Snapshot.result(rating, RATER));
    }

    private static Rating rate(Build build) {
        return RATER.preview(build, List.of(StandardDuties.STREET));
    }
}
