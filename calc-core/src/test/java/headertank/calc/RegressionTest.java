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
        "road, street, jam, 358.604081, 363.808199, 352.401190, 369.2178750, 0.676260, 0.051210769",
        "road, street, hill, 365.410560, 375.844637, 326.455865, 343.132029, 0.737604, 1.029420734",
        "road, street, motorway, 362.988600, 374.262007, 336.488549, 354.246795, 1.482293, 0.930386513",
        "road, track, laps, 364.432474, 382.920026, 325.155743, 342.154700, 1.672344, 1.714049460",
        "road, drift, run, 371.746673, 388.160956, 315.534700, 331.697161, 0.937370, 2.020859210",
        "road, drift, queue, 358.358790, 363.704410, 361.744295, 378.957228, 0.689763, 0.038526021",
        "track, street, jam, 352.042028, 356.759587, 367.195948, 385.749320, 0.866154, 0.038772696",
        "track, street, hill, 353.354660, 358.350173, 342.827620, 360.739131, 0.970357, 0.393543184",
        "track, street, motorway, 353.245520, 356.333528, 350.898455, 369.765180, 2.076316, 0.404002833",
        "track, track, laps, 366.189271, 361.654821, 319.471814, 337.001656, 2.305744, 3.239128749",
        "track, drift, run, 379.549981, 374.714082, 306.260457, 322.688877, 1.224470, 3.246245369",
        "track, drift, queue, 352.202321, 362.797256, 363.391537, 381.763456, 0.853038, 0.049060770",
        "drift, street, jam, 352.420333, 355.229478, 355.926872, 373.969726, 0.941337, 0.092983994",
        "drift, street, hill, 360.715980, 360.740370, 324.099585, 340.646261, 1.102172, 2.459242307",
        "drift, street, motorway, 354.947881, 357.733772, 340.897350, 359.258481, 2.453403, 1.361160945",
        "drift, track, laps, 385.270625, 379.128518, 301.320538, 317.728800, 2.695564, 4.594887960",
        "drift, drift, run, 412.475273, 407.365777, 280.742088, 295.512954, 1.380975, 4.299499033",
        "drift, drift, queue, 352.534352, 355.389740, 353.736754, 371.658848, 0.928990, 0.106267786"
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
        "road, 364.918064, 377.746298, 903.452365",
        "track, 366.339058, 366.448663, 902.277938",
        "drift, 377.807172, 376.967018, 902.582669"
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
