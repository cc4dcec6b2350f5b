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
        "road, street, jam, 358.570046, 362.014689, 352.777141, 369.610489, 0.677034, 0.049354539",
        "road, street, hill, 365.394666, 379.736293, 326.486751, 343.169093, 0.737679, 1.028526948",
        "road, street, motorway, 362.603410, 377.306263, 337.004042, 354.773871, 1.483149, 0.879727265",
        "road, track, laps, 363.865109, 396.349758, 326.507386, 343.549323, 1.674594, 1.634061645",
        "road, drift, run, 370.992215, 403.315223, 316.249977, 332.431654, 0.938411, 2.020359455",
        "road, drift, queue, 358.328740, 361.851803, 362.053768, 379.278580, 0.690596, 0.037085766",
        "track, street, jam, 352.012109, 354.990237, 368.183181, 386.769572, 0.867246, 0.037011064",
        "track, street, hill, 353.327171, 358.304038, 342.200994, 360.018009, 0.970659, 0.385863065",
        "track, street, motorway, 353.259796, 356.272694, 349.859825, 368.705779, 2.076040, 0.408366053",
        "track, track, laps, 366.691875, 360.856164, 318.552352, 335.965551, 2.304637, 3.239414165",
        "track, drift, run, 380.217540, 369.283806, 305.654929, 321.886361, 1.223267, 3.246584581",
        "track, drift, queue, 352.126570, 355.471716, 365.755311, 384.238923, 0.856080, 0.044023707",
        "drift, street, jam, 352.348585, 357.135662, 357.258831, 375.470605, 0.948877, 0.085055859",
        "drift, street, hill, 357.906335, 361.655076, 328.016401, 344.967682, 1.119875, 2.084512197",
        "drift, street, motorway, 354.194726, 358.205327, 343.122943, 361.728697, 2.469991, 1.014069898",
        "drift, track, laps, 380.310280, 366.491057, 305.669246, 322.510597, 2.733902, 4.590627093",
        "drift, drift, run, 402.123203, 396.411045, 287.873607, 303.255679, 1.420636, 4.608036122",
        "drift, drift, queue, 352.454350, 357.818963, 354.803702, 372.888656, 0.936618, 0.096861198"
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
        "road, 365.259888, 385.639371, 903.952191",
        "track, 367.342721, 364.636033, 227.046318",
        "drift, 375.249785, 381.406672, 452.451297"
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
