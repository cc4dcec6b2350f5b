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
        "road, street, jam, 358.571199, 362.015796, 352.716778, 370.383634, 0.676356, 0.049411292",
        "road, street, hill, 365.389771, 379.731703, 326.417427, 343.906650, 0.736919, 1.027479681",
        "road, street, motorway, 362.667193, 377.362424, 336.947040, 355.581992, 1.482005, 0.888160202",
        "road, track, laps, 363.890695, 396.371961, 326.412620, 344.324003, 1.673347, 1.636662821",
        "road, drift, run, 371.097946, 403.412126, 316.149393, 333.127479, 0.937554, 2.019137392",
        "road, drift, queue, 358.329184, 361.852231, 362.004430, 380.082982, 0.689931, 0.037103702",
        "track, street, jam, 352.012216, 354.990246, 368.149507, 386.734647, 0.865745, 0.037016259",
        "track, street, hill, 353.340924, 358.304643, 342.125227, 359.937055, 0.968920, 0.389681468",
        "track, street, motorway, 353.268986, 356.272910, 349.796083, 368.639904, 2.072920, 0.411164456",
        "track, track, laps, 366.816106, 360.858415, 318.433451, 335.842186, 2.301197, 3.238262279",
        "track, drift, run, 380.373197, 369.308293, 305.520935, 321.745905, 1.221081, 3.245490785",
        "track, drift, queue, 352.126773, 355.471733, 365.716251, 384.198352, 0.854586, 0.044035347",
        "drift, street, jam, 352.349359, 357.135702, 357.201861, 375.434138, 0.946967, 0.085135610",
        "drift, street, hill, 357.936241, 361.655944, 327.924161, 344.867396, 1.117910, 2.089180767",
        "drift, street, motorway, 354.218884, 358.205714, 343.043785, 361.646819, 2.465507, 1.025370374",
        "drift, track, laps, 380.471255, 366.503289, 305.525530, 322.361317, 2.728873, 4.588918409",
        "drift, drift, run, 402.328415, 396.435860, 287.716737, 303.091300, 1.417782, 4.606443173",
        "drift, drift, queue, 352.455476, 357.819029, 354.741163, 372.848144, 0.934714, 0.096985676"
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
        assertThat(s.oilK()).isCloseTo(oilK, within(KELVIN));
        assertThat(f.limitingAmbientK()).isCloseTo(limitingK, within(KELVIN));
        assertThat(f.boilingAmbientK()).isCloseTo(boilingK, within(KELVIN));
        assertThat(s.airMassKgPerS()).isCloseTo(airKgPerS, within(2e-6));
        assertThat(1e3 * s.radiatorM3PerS()).isCloseTo(litresPerS, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({
        "road, 365.280029, 385.648414, 903.969038",
        "track, 367.397335, 364.638660, 227.049931",
        "drift, 375.309071, 381.409360, 677.455776"
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
