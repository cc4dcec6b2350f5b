package headertank.calc.rating;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.Builds;
import headertank.calc.Rater;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.choice.OilCoolerPlace;
import headertank.calc.coolant.Thermostat;
import headertank.calc.duty.Duty;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.duty.StandardDuties;
import headertank.calc.fluid.Air;
import headertank.calc.quantity.Physics;
import headertank.calc.quantity.Stated;
import headertank.calc.result.Balance;
import headertank.calc.result.Figures;
import headertank.calc.result.PointRating;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SteadyBalanceTest {

    private static final Rater RATER = Rater.standard();

    /**
     * Heat through the radiator of an independent prototype of the same air, coolant and radiator equations, at its own coolant
     * temperature and full fans, which left out the heat of an oil cooler in front. It takes the core's drop at one density for every temperature and Melinder's coolant
     * properties; ours brings the drop to inlet density and uses the ASHRAE tables.
     */
    @ParameterizedTest
    @CsvSource({
        "road, track, laps, 94.4, 58.8, 0.02",
        "road, drift, run, 106.7, 49.4, 0.03",
        "track, track, laps, 95.4, 92.9, 0.02",
        "track, drift, run, 111.2, 74.8, 0.03",
        "drift, drift, run, 137.3, 126.0, 0.03"
    })
    void theRadiatorGivesOffWhatThePrototypesDoes(
            String car, String duty, String point, double celsius, double kilowatts, double tolerance) {
        double ambientK = Physics.kelvin(30);
        double hotK = Physics.kelvin(celsius);
        Plant plant = Plant.of(RATER.resolve(car(car).change()
                .set(BuildField.AMBIENT, Stated.measured(ambientK))
                .seen(BuildField.OIL_COOLER_PLACE, OilCoolerPlace.ELSEWHERE)
                .build()));
        SteadySolver solver = new SteadySolver(plant, RATER.duties().get(duty).point(point));
        CoolingState s = solver.cooling(hotK, ambientK, Thermostat.lift(plant.thermostat(), hotK), 1);
        assertThat(s.capacityRateWPerK() * s.coolantEffectiveness() * (hotK - s.airInK()) / 1000)
                .isCloseTo(kilowatts, within(tolerance * kilowatts));
    }

    @Test
    void heatBalancesWithinAMillionthInEveryNamedCase() {
        for (Build build : new Build[] {Builds.road(), Builds.track(), Builds.drift()}) {
            for (Duty duty : RATER.duties().values()) {
                for (OperatingPoint p : duty.points()) {
                    Balance.Steady s = steady(build, p);
                    double given = s.core().heatW() + s.surfaceHeatW();
                    double taken = s.heat().coolantW() + s.oil().toCoolantW();
                    assertThat(given).as("%s %s", duty.id(), p.id()).isCloseTo(taken, within(1e-6 * taken));
                    assertThat(Math.abs(s.residuals().heatShare())).isLessThan(1e-6);
                    assertThat(Math.abs(s.residuals().airPa())).isLessThan(0.5);
                    assertThat(Math.abs(s.residuals().coolantPa())).isLessThan(5);
                    double coolantSide = s.core().heatW();
                    double airSide = s.air().massKgPerS()
                            * Air.heatCapacityJPerKgK(
                                    0.5 * (s.air().inK() + s.air().outK()))
                            * (s.air().outK() - s.air().inK());
                    assertThat(airSide).isCloseTo(coolantSide, within(1e-4 * coolantSide));
                }
            }
        }
    }

    @Test
    void limitingAmbientPutsTheCoolantAtItsLimit() {
        OperatingPoint laps = StandardDuties.TRACK.point("laps");
        PointRating rated = RATER.at(Builds.drift(), laps);
        double limiting = rated.figures().orElseThrow().limitingAmbientK();
        Build onThatDay = Builds.drift()
                .change()
                .set(BuildField.AMBIENT, Stated.measured(limiting))
                .build();
        double limit = RATER.resolve(onThatDay).value(BuildField.COOLANT_LIMIT);
        assertThat(steady(onThatDay, laps).engineOutK()).isCloseTo(limit, within(0.25));
    }

    @Test
    void boilingAmbientLiesAboveTheLimitingOne() {
        Figures f = RATER.at(Builds.road(), StandardDuties.TRACK.point("laps"))
                .figures()
                .orElseThrow();
        assertThat(f.boilingAmbientK()).isGreaterThan(f.limitingAmbientK());
        assertThat(f.limitingAmbientLinearK()).isCloseTo(f.limitingAmbientK(), within(3.0));
    }

    @Test
    void tooMuchHeatIsAReasonNotANumber() {
        Build tiny = Builds.drift()
                .change()
                .set(BuildField.CORE_WIDTH, Stated.measured(0.15))
                .set(BuildField.CORE_HEIGHT, Stated.measured(0.10))
                .build();
        Balance balance = RATER.at(tiny, StandardDuties.DRIFT.point("run")).balance();
        assertThat(balance).isInstanceOf(Balance.None.class);
        assertThat(((Balance.None) balance).reason()).isEqualTo(Balance.Reason.HEAT_EXCEEDS_COOLING);
    }

    private static Build car(String name) {
        return switch (name) {
            case "road" -> Builds.road();
            case "track" -> Builds.track();
            default -> Builds.drift();
        };
    }

    private static Balance.Steady steady(Build build, OperatingPoint point) {
        return (Balance.Steady) RATER.at(build, point).balance();
    }
}
