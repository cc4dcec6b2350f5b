package headertank.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.carspec.Build;
import headertank.calc.duty.StandardDuties;
import headertank.calc.rating.Plant;
import headertank.calc.result.Balance;
import headertank.calc.result.Figures;
import headertank.calc.result.PointRating;
import headertank.calc.result.RunResult;
import headertank.calc.transients.RunSolver;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Our own answers, stored: a change of the solvers must not change what they solve. These figures prove nothing about the
 * physics; a change of a model changes them, and then they are stored anew with a word in the commit.
 */
class RegressionTest {

    private static final Rater RATER = Rater.standard();
    private static final double KELVIN = 1e-4;

    @ParameterizedTest
    @CsvSource({
        "road, street, jam, 358.603885, 364.125347, 352.406498, 369.2235870, 0.676264, 0.051197854",
        "road, street, hill, 365.406607, 376.472128, 326.468309, 343.1449188, 0.737623, 1.029198808",
        "road, street, motorway, 362.978660, 374.917664, 336.504277, 354.2629028, 1.482314, 0.929138819",
        "road, track, laps, 364.423138, 384.017605, 325.176699, 342.1758486, 1.672379, 1.712816183",
        "road, drift, run, 371.723825, 389.128795, 315.556222, 331.7191005, 0.937402, 2.020844165",
        "road, drift, queue, 358.358678, 364.032692, 361.748435, 378.9616796, 0.689766, 0.038518964",
        "track, street, jam, 352.041121, 356.802535, 367.205278, 385.7586886, 0.866188, 0.038718538",
        "track, street, hill, 353.350239, 358.376163, 342.822611, 360.7323049, 0.970412, 0.392305430",
        "track, street, motorway, 353.244018, 356.342377, 350.880097, 369.7463221, 2.076339, 0.403544639",
        "track, track, laps, 366.205741, 361.643067, 319.447948, 336.9749148, 2.305708, 3.239138138",
        "track, drift, run, 379.565384, 374.642085, 306.246409, 322.6706866, 1.224442, 3.246253220",
        "track, drift, queue, 352.201500, 363.034779, 363.397832, 381.7699948, 0.853071, 0.049004542",
        "drift, street, jam, 352.415493, 355.303203, 355.879021, 373.9218316, 0.941438, 0.092438432",
        "drift, street, hill, 360.715501, 360.741063, 324.055728, 340.6016009, 1.102173, 2.459201556",
        "drift, street, motorway, 354.923330, 357.795191, 340.858341, 359.2203801, 2.453415, 1.350244557",
        "drift, track, laps, 385.339836, 378.640189, 301.260407, 317.6720389, 2.695566, 4.594946051",
        "drift, drift, run, 412.541321, 406.886722, 280.695247, 295.4661018, 1.380949, 4.296666500",
        "drift, drift, queue, 352.529052, 355.464934, 353.677931, 371.5996843, 0.929105, 0.105632449"
    })
    void steadyStatesStayWhatTheyWere(
            String car,
            String duty,
            String point,
            double hotK,
            double oilK,
            double limitingK,
            double boilingK,
            double airKgPerS,
            double litresPerS) {
        PointRating rated = RATER.at(car(car), RATER.duties().get(duty).point(point));
        Balance.Steady s = (Balance.Steady) rated.balance();
        Figures f = rated.figures().orElseThrow();
        assertThat(s.engineOutK()).isCloseTo(hotK, within(KELVIN));
        assertThat(s.oil().oilK()).isCloseTo(oilK, within(KELVIN));
        assertThat(f.limitingAmbientK()).isCloseTo(limitingK, within(KELVIN));
        assertThat(f.boilingAmbientK()).isCloseTo(boilingK, within(KELVIN));
        assertThat(s.air().massKgPerS()).isCloseTo(airKgPerS, within(2e-6));
        assertThat(1e3 * s.coolant().radiatorM3PerS()).isCloseTo(litresPerS, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({
        "road, 364.894665, 378.459566, 903.457413",
        "track, 366.337211, 366.498634, 902.278877",
        "drift, 377.835101, 377.109236, 902.587625"
    })
    void runsStayWhatTheyWere(String car, double peakK, double peakOilK, double atS) {
        RunResult run = RunSolver.run(Plant.of(RATER.resolve(car(car))), StandardDuties.DRIFT);
        assertThat(run.peakCoolantK()).isCloseTo(peakK, within(KELVIN));
        assertThat(run.peakOilK()).isCloseTo(peakOilK, within(KELVIN));
        assertThat(run.peakCoolantAtS()).isCloseTo(atS, within(1e-6));
    }

    private static Build car(String name) {
        return switch (name) {
            case "road" -> Builds.road();
            case "track" -> Builds.track();
            default -> Builds.drift();
        };
    }
}
