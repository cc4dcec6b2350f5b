package headertank.calc.rating;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.calc.Builds;
import headertank.calc.Rater;
import headertank.calc.carspec.Build;
import headertank.calc.duty.StandardDuties;
import headertank.calc.quantity.Message;
import headertank.calc.quantity.SiFigure;
import headertank.calc.result.SlowCoolant;
import headertank.calc.result.SlowCoolant.FlowLine;
import headertank.calc.result.SlowCoolant.PassLine;
import headertank.calc.result.SlowCoolant.Thermostatted;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SlowCoolantTest {

    private static final Rater RATER = Rater.standard();

    @ParameterizedTest
    @ValueSource(strings = {"road", "track", "drift"})
    void heatRisesAndFlattensWhileTheDropPerPassFalls(String car) {
        List<FlowLine> table = of(car).againstFlow();
        for (int i = 1; i < table.size(); i++) {
            FlowLine slower = table.get(i - 1);
            FlowLine faster = table.get(i);
            assertThat(faster.heatW()).isGreaterThan(slower.heatW());
            assertThat(faster.coolantDropK()).isLessThan(slower.coolantDropK());
            assertThat(faster.pressureDropPa()).isGreaterThan(slower.pressureDropPa());
        }
        double perLitreEarly = gain(table, 0, 1);
        double perLitreLate = gain(table, table.size() - 2, table.size() - 1);
        assertThat(perLitreLate).isLessThan(0.05 * perLitreEarly);
    }

    @ParameterizedTest
    @ValueSource(strings = {"road", "track", "drift"})
    void morePassesGainHeatAtEqualFlowAndLoseFlowOnTheSamePump(String car) {
        List<PassLine> lines = of(car).passes();
        for (int i = 0; i < lines.size(); i += 3) {
            PassLine one = lines.get(i);
            for (PassLine more : lines.subList(i + 1, i + 3)) {
                assertThat(more.pumpSpeedShare()).isEqualTo(one.pumpSpeedShare());
                assertThat(more.heatAtFlowOfOneW()).isGreaterThan(one.heatAtFlowOfOneW());
                assertThat(more.flowM3PerS()).isLessThan(one.flowM3PerS());
                assertThat(more.pressureDropPa()).isGreaterThan(one.pressureDropPa());
                assertThat(more.heatW()).isLessThan(more.heatAtFlowOfOneW());
            }
        }
    }

    /** Two passes pay where they lift the coolant out of the slow regime, and cost where the pump is weak or fast already. */
    @Test
    void whetherTwoPassesPayDependsOnThePump() {
        List<PassLine> road = of("road").passes();
        assertThat(road.get(1).heatW())
                .as("weak pump at idle")
                .isLessThan(road.get(0).heatW());
        assertThat(road.get(4).heatW())
                .as("transition at cruise")
                .isGreaterThan(road.get(3).heatW());
        List<PassLine> drift = of("drift").passes();
        assertThat(drift.get(7).heatW())
                .as("turbulent already: nothing to gain")
                .isLessThan(1.001 * drift.get(6).heatW());
        for (String car : List.of("road", "track", "drift")) {
            List<PassLine> lines = of(car).passes();
            assertThat(lines.get(8).heatW())
                    .as("three passes")
                    .isLessThan(lines.get(7).heatW());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"road", "track", "drift"})
    void theThermostatKeepsTheEngineWarmAndTheBlockUnderPressure(String car) {
        SlowCoolant s = of(car);
        Thermostatted in = s.withThermostat();
        Thermostatted out = s.withoutThermostat();
        assertThat(out.lightLoadK()).isLessThan(in.lightLoadK() - 20);
        assertThat(out.lightLoadOilK()).isLessThan(in.lightLoadOilK());
        assertThat(out.warmingW()).isLessThan(in.warmingW());
        assertThat(in.warmingW()).isPositive();
        assertThat(out.bypassShare()).isGreaterThan(0.1);
        assertThat(in.bypassShare()).isLessThan(0.02);
        assertThat(out.radiatorM3PerS()).isLessThan(in.radiatorM3PerS());
        assertThat(out.headPressurePa()).isLessThan(in.headPressurePa());
        assertThat(out.headBoilingK()).isLessThan(in.headBoilingK());
    }

    @ParameterizedTest
    @ValueSource(strings = {"road", "track", "drift"})
    void theWordsCarryTheFigures(String car) {
        SlowCoolant s = of(car);
        List<Message> words = s.inWords();
        assertThat(words).hasSize(9).allSatisfy(w -> assertThat(w.arguments()).isNotEmpty());
        FlowLine fast = s.againstFlow().get(s.againstFlow().size() - 1);
        assertThat(words.get(0).arguments()).contains(SiFigure.power(fast.heatW()));
    }

    @Test
    void anyCarGetsAnAnswer() {
        for (long seed = 1; seed <= 60; seed++) {
            Build build = Builds.random(seed);
            SlowCoolant s = RATER.slowCoolant(build, StandardDuties.TRACK, "laps");
            List<FlowLine> table = s.againstFlow();
            for (int i = 1; i < table.size(); i++) {
                assertThat(table.get(i).heatW())
                        .as("seed " + seed)
                        .isGreaterThanOrEqualTo(table.get(i - 1).heatW());
            }
            assertThat(s.inWords()).as("seed " + seed).noneMatch(w -> w.toString()
                    .contains("NaN"));
        }
    }

    private static double gain(List<FlowLine> table, int from, int to) {
        return (table.get(to).heatW() - table.get(from).heatW())
                / (table.get(to).flowM3PerS() - table.get(from).flowM3PerS());
    }

    private static SlowCoolant of(String car) {
        Build build =
                switch (car) {
                    case "road" -> Builds.road();
                    case "track" -> Builds.track();
                    default -> Builds.drift();
                };
        return RATER.slowCoolant(build, StandardDuties.TRACK, "laps");
    }
}
