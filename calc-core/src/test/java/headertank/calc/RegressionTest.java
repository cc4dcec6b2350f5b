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
        "road, street, jam, 358.604114, 363.808231, 352.401979, 369.2189942, 0.676259, 0.051210429",
        "road, street, hill, 365.410509, 375.844588, 326.456138, 343.1324466, 0.737604, 1.029417878",
        "road, street, motorway, 362.988600, 374.262007, 336.488549, 354.2467954, 1.482293, 0.930386560",
        "road, track, laps, 364.432474, 382.920026, 325.155743, 342.1546996, 1.672344, 1.714049460",
        "road, drift, run, 371.746654, 388.160938, 315.534728, 331.6972093, 0.937370, 2.020859197",
        "road, drift, queue, 358.358823, 363.704442, 361.744888, 378.9580641, 0.689762, 0.038525960",
        "track, street, jam, 352.042032, 356.759588, 367.195994, 385.7493973, 0.866154, 0.038772941",
        "track, street, hill, 353.354660, 358.350173, 342.827644, 360.7391715, 0.970357, 0.393543212",
        "track, street, motorway, 353.245520, 356.333528, 350.898455, 369.7651802, 2.076316, 0.404002821",
        "track, track, laps, 366.189271, 361.654821, 319.471814, 337.0016556, 2.305744, 3.239128749",
        "track, drift, run, 379.549977, 374.714079, 306.260457, 322.6888779, 1.224470, 3.246245367",
        "track, drift, queue, 352.202325, 362.797259, 363.391600, 381.7635637, 0.853038, 0.049061063",
        "drift, street, jam, 352.420335, 355.229478, 355.926910, 373.9697948, 0.941337, 0.092984156",
        "drift, street, hill, 360.715980, 360.740370, 324.099585, 340.6462711, 1.102172, 2.459242307",
        "drift, street, motorway, 354.947881, 357.733772, 340.897349, 359.2584808, 2.453403, 1.361160945",
        "drift, track, laps, 385.270621, 379.128516, 301.320538, 317.7288013, 2.695564, 4.594887957",
        "drift, drift, run, 412.475273, 407.365777, 280.742090, 295.5129593, 1.380975, 4.299499033",
        "drift, drift, queue, 352.534354, 355.389740, 353.736798, 371.6589289, 0.928990, 0.106267984"
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
        "road, 364.918062, 377.746297, 903.452355",
        "track, 366.339058, 366.448662, 902.277936",
        "drift, 377.807171, 376.967018, 902.582667"
    })
    void runsStayWhatTheyWere(String car, double peakK, double peakOilK, double atS) {
        RunResult run = RunSolver.run(Plant.of(RATER.resolve(car(car))), StandardDuties.DRIFT);
        assertThat(run.peaks().coolantK()).isCloseTo(peakK, within(KELVIN));
        assertThat(run.peaks().oilK()).isCloseTo(peakOilK, within(KELVIN));
        assertThat(run.peaks().coolantAtS()).isCloseTo(atS, within(1e-6));
    }

    private static Build car(String name) {
        return switch (name) {
            case "road" -> Builds.road();
            case "track" -> Builds.track();
            default -> Builds.drift();
        };
    }
}
