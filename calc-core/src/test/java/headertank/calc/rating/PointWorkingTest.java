package headertank.calc.rating;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.Builds;
import headertank.calc.Rater;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.duty.Duty;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.duty.StandardDuties;
import headertank.calc.quantity.Stated;
import headertank.calc.quantity.WorkedPart;
import headertank.calc.quantity.WorkingLine;
import headertank.calc.quantity.WorkingSection;
import headertank.calc.result.Balance;
import headertank.calc.result.Figures;
import headertank.calc.result.PointRating;
import java.util.List;
import org.junit.jupiter.api.Test;

class PointWorkingTest {

    private static final Rater RATER = Rater.standard();

    @Test
    void everyLineIsCompleteAndFinite() {
        for (Build build : List.of(Builds.road(), Builds.track(), Builds.drift(), Builds.random(7), Builds.random(8))) {
            for (Duty duty : RATER.duties().values()) {
                for (OperatingPoint p : duty.points()) {
                    List<WorkingSection> working = RATER.working(build, duty, p.id());
                    assertThat(working).isNotEmpty();
                    for (WorkingSection section : working) {
                        assertThat(section.lines())
                                .as(section.title().name())
                                .isNotEmpty()
                                .allSatisfy(l -> {
                                    assertThat(l.symbol()).isNotBlank();
                                    assertThat(l.unit()).isNotBlank();
                                    assertThat(l.source()).isNotBlank();
                                    assertThat(l.value())
                                            .as(l.quantity().name())
                                            .isFinite();
                                });
                    }
                }
            }
        }
    }

    @Test
    void theWorkingLeadsToTheRating() {
        for (Build build : List.of(Builds.road(), Builds.track(), Builds.drift())) {
            for (Duty duty : RATER.duties().values()) {
                for (OperatingPoint p : duty.points()) {
                    List<WorkingSection> working = RATER.working(build, duty, p.id());
                    PointRating rated = RATER.at(build, p);
                    Balance.Steady s = (Balance.Steady) rated.balance();
                    Figures f = rated.figures().orElseThrow();
                    assertThat(value(working, WorkedPart.STEADY_BALANCE, "T_h")).isEqualTo(s.engineOutK());
                    assertThat(value(working, WorkedPart.OIL, "T_oil"))
                            .isEqualTo(s.oil().oilK());
                    assertThat(value(working, WorkedPart.HEAT_OF_THE_ENGINE, "Q_fuel"))
                            .isEqualTo(s.heat().fuelW());
                    assertThat(value(working, WorkedPart.COOLANT_FLOW, "Q_r"))
                            .isEqualTo(s.coolant().radiatorM3PerS());
                    assertThat(value(working, WorkedPart.AIR_THROUGH_THE_CORE, "m_a"))
                            .isCloseTo(
                                    s.air().massKgPerS(), within(1e-7 * s.air().massKgPerS()));
                    assertThat(value(working, WorkedPart.RADIATOR, "Q"))
                            .isCloseTo(s.core().heatW(), within(1e-6 * s.core().heatW()));
                    assertThat(value(working, WorkedPart.RADIATOR, "NTU"))
                            .isCloseTo(s.core().ntu(), within(1e-6 * s.core().ntu()));
                    assertThat(value(working, WorkedPart.CURRENT, "I_fan"))
                            .isEqualTo(s.electrics().fanA());
                    assertThat(value(working, WorkedPart.PUMP_INLET, "-"))
                            .isEqualTo(s.coolant().pumpInletMarginPa());
                    assertThat(value(working, WorkedPart.BOILING, "T_sat - T_h"))
                            .isEqualTo(f.boilingMarginK());
                    assertThat(value(working, WorkedPart.FIGURES, "T_lim - T_h"))
                            .isEqualTo(f.coolantMarginK());
                    List<WorkingLine> lat = lines(working, WorkedPart.FIGURES, "LAT");
                    assertThat(lat.get(0).value()).isEqualTo(f.limitingAmbientLinearK());
                    assertThat(lat.get(1).value()).isEqualTo(f.limitingAmbientK());
                    assertThat(lat.get(2).value())
                            .isCloseTo(f.limitingAmbientK() - f.limitingAmbientLinearK(), within(1e-9));
                }
            }
        }
    }

    @Test
    void withoutASteadyStateTheWorkingEndsAtTheDemand() {
        Build tiny = Builds.drift()
                .change()
                .set(BuildField.CORE_WIDTH, Stated.measured(0.15))
                .set(BuildField.CORE_HEIGHT, Stated.measured(0.10))
                .build();
        assertThat(RATER.working(tiny, StandardDuties.DRIFT, "run"))
                .extracting(WorkingSection::title)
                .containsExactly(WorkedPart.WHAT_THE_POINT_ASKS, WorkedPart.HEAT_OF_THE_ENGINE);
    }

    @Test
    void anUnknownPointIsRefused() {
        assertThatThrownBy(() -> RATER.working(Builds.road(), StandardDuties.TRACK, "nowhere"))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static double value(List<WorkingSection> working, WorkedPart title, String symbol) {
        return lines(working, title, symbol).get(0).value();
    }

    private static List<WorkingLine> lines(List<WorkingSection> working, WorkedPart title, String symbol) {
        List<WorkingLine> found = working.stream()
                .filter(s -> s.title() == title)
                .flatMap(s -> s.lines().stream())
                .filter(l -> l.symbol().equals(symbol))
                .toList();
        assertThat(found).as("%s %s", title, symbol).isNotEmpty();
        return found;
    }
}
