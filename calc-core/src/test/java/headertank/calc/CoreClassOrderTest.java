package headertank.calc;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.choice.Ducting;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.duty.StandardDuties;
import headertank.calc.fluid.Air;
import headertank.calc.quantity.Note;
import headertank.calc.quantity.NoteText;
import headertank.calc.quantity.Physics;
import headertank.calc.quantity.Stated;
import headertank.calc.radiator.RadiatorPoint;
import headertank.calc.rating.Plant;
import headertank.calc.result.Balance;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Which class of core is the better one: on a bench at equal face and equal air velocity, and in cars with and without air. */
class CoreClassOrderTest {

    private static final Rater RATER = Rater.standard();
    private static final List<String> BEST_FIRST = List.of(
            "two-row-aluminium",
            "dense-aluminium",
            "bargain-aluminium",
            "copper-brass-louvred",
            "thin-original",
            "old-copper-brass");
    private static final OperatingPoint LAPS = StandardDuties.TRACK.point("laps");
    private static final OperatingPoint HILL = StandardDuties.STREET.point("hill");

    /** Depth, rows and pitch that nobody stated come from the class of core, whatever the class of car. */
    @ParameterizedTest
    @ValueSource(doubles = {2, 4, 6, 8, 10})
    void onABenchAtEqualAir(double faceMPerS) {
        for (CarClass of : CarClass.values()) {
            assertThat(BEST_FIRST.stream().map(id -> -benchW(of, id, faceMPerS)).toList())
                    .as("%s", of)
                    .isSorted();
        }
    }

    @Test
    void inACarThatLetsTheAirThrough() {
        Build.Builder car = car();
        assertThat(BEST_FIRST.stream().map(id -> hotK(car, id, LAPS)).toList()).isSorted();
    }

    /** Weak fans and no ducts: less air passes a dense core than a coarse one, and at low speed the coarse one is the better. */
    @Test
    void inACarWithoutAirACoarserCoreIsBetterAndTheResultShowsWhy() {
        Build.Builder car = car().set(BuildField.FAN_FLOW, Stated.measured(0.15))
                .set(BuildField.FAN_SHUT_OFF, Stated.measured(40))
                .seen(BuildField.AIR_DUCT, Ducting.OPEN);
        Balance.Steady dense = steady(car, "dense-aluminium", HILL);
        Balance.Steady coarse = steady(car, "bargain-aluminium", HILL);
        assertThat(coarse.engineOutK()).isLessThan(dense.engineOutK());
        assertThat(coarse.air().faceVelocityMPerS())
                .isGreaterThan(1.05 * dense.air().faceVelocityMPerS());
    }

    /** A narrow exit takes a part of what a better core brings. */
    @Test
    void aNarrowExitTakesPartOfTheDifference() {
        Build.Builder free = car();
        double open = hotK(free, "thin-original", LAPS) - hotK(free, "bargain-aluminium", LAPS);
        Build.Builder shut = car().set(BuildField.AIR_EXIT_AREA, Stated.measured(0.04));
        Balance.Steady thin = steady(shut, "thin-original", LAPS);
        Balance.Steady bargain = steady(shut, "bargain-aluminium", LAPS);
        double perKelvin = (thin.engineOutK() - bargain.engineOutK()) / (thin.engineOutK() - thin.ambientK());
        assertThat(perKelvin)
                .isLessThan(open
                        / (hotK(free, "thin-original", LAPS)
                                - steady(free, "thin-original", LAPS).ambientK()));
        assertThat(thin.air().faceVelocityMPerS())
                .isLessThan(0.6 * steady(free, "thin-original", LAPS).air().faceVelocityMPerS());
    }

    @Test
    void figuresThatNoCoreOfTheClassHasAreNamed() {
        Build odd = car().seen(BuildField.CORE_CLASS, "thin-original")
                .set(BuildField.CORE_DEPTH, Stated.measured(0.052))
                .set(BuildField.TUBE_ROWS, Stated.measured(2))
                .set(BuildField.FIN_PITCH, Stated.measured(0.0025))
                .build();
        assertThat(unlike(odd))
                .containsExactlyInAnyOrder(
                        BuildField.CORE_DEPTH.key(), BuildField.TUBE_ROWS.key(), BuildField.FIN_PITCH.key());
        Build usual = car().seen(BuildField.CORE_CLASS, "thin-original")
                .set(BuildField.CORE_DEPTH, Stated.measured(0.022))
                .set(BuildField.TUBE_ROWS, Stated.measured(1))
                .set(BuildField.FIN_PITCH, Stated.measured(0.0012))
                .build();
        assertThat(unlike(usual)).isEmpty();
        assertThat(unlike(car().build()))
                .as("what nobody stated comes from the class")
                .isEmpty();
    }

    private static List<String> unlike(Build build) {
        return RATER.preview(build, List.of(StandardDuties.TRACK)).notes().stream()
                .filter(n -> n.why().code().equals(NoteText.CORE_UNLIKE_ITS_CLASS.code()))
                .map(Note::field)
                .toList();
    }

    private static double benchW(CarClass of, String id, double faceMPerS) {
        Build build = Build.forCar(of)
                .seen(BuildField.CORE_CLASS, id)
                .set(BuildField.CORE_WIDTH, Stated.measured(0.65))
                .set(BuildField.CORE_HEIGHT, Stated.measured(0.42))
                .set(BuildField.CORE_BLOCKED, Stated.measured(0))
                .set(BuildField.CORE_FOULING, Stated.measured(3.5e-5))
                .set(BuildField.COOLANT_GLYCOL, Stated.measured(0.5))
                .seen(BuildField.CORE_TANKS, "SIDES")
                .build();
        Plant plant = Plant.of(RATER.resolve(build));
        double kgPerS = faceMPerS * 0.65 * 0.42 * Air.densityKgPerM3(Physics.STANDARD_PRESSURE_PA, 308.15, 0);
        RadiatorPoint p =
                plant.radiator().heat(kgPerS, 308.15, Physics.STANDARD_PRESSURE_PA, 0.003, plant.coolant(), 368.15);
        return p.heatW();
    }

    private static Build.Builder car() {
        return Build.forCar(CarClass.TRACK)
                .set(BuildField.ENGINE_POWER, Stated.measured(260e3))
                .set(BuildField.CORE_WIDTH, Stated.measured(0.65))
                .set(BuildField.CORE_HEIGHT, Stated.measured(0.42));
    }

    private static double hotK(Build.Builder car, String id, OperatingPoint point) {
        return steady(car, id, point).engineOutK();
    }

    private static Balance.Steady steady(Build.Builder car, String id, OperatingPoint point) {
        return (Balance.Steady)
                RATER.at(car.seen(BuildField.CORE_CLASS, id).build(), point).balance();
    }
}
