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
        "road, street, jam, 358.604081, 363.808199, 352.401442, 370.052009, 0.676260, 0.051208617",
        "road, street, hill, 365.573651, 376.058496, 325.968948, 343.453130, 0.736865, 1.038374129",
        "road, street, motorway, 363.139554, 374.446198, 336.265429, 354.900361, 1.481976, 0.948959954",
        "road, track, laps, 364.432474, 382.920026, 325.155743, 342.992982, 1.672344, 1.714049460",
        "road, drift, run, 371.746673, 388.160956, 315.534700, 332.495014, 0.937370, 2.020859210",
        "road, drift, queue, 358.358790, 363.704410, 361.744542, 379.811127, 0.689763, 0.038524379",
        "track, street, jam, 352.032276, 354.421499, 367.438551, 385.939191, 0.864420, 0.038192871",
        "track, street, hill, 353.819220, 357.596129, 339.538256, 357.092141, 0.961535, 0.527851619",
        "track, street, motorway, 353.445901, 356.546218, 348.210336, 366.952550, 2.068025, 0.466351872",
        "track, track, laps, 369.756662, 362.688460, 315.374506, 332.494284, 2.286263, 3.241106013",
        "track, drift, run, 386.026431, 378.944599, 300.760735, 316.567344, 1.203757, 3.249448456",
        "track, drift, queue, 352.146476, 354.566634, 365.128067, 383.524779, 0.853189, 0.045317436",
        "drift, street, jam, 352.420333, 355.229478, 355.926872, 373.969726, 0.941337, 0.092983994",
        "drift, street, hill, 361.050120, 360.835058, 323.681745, 340.210876, 1.101184, 2.485942740",
        "drift, street, motorway, 355.069290, 357.767543, 340.608943, 358.954809, 2.452626, 1.414607686",
        "drift, track, laps, 385.270625, 379.128518, 301.320538, 317.728800, 2.695564, 4.594887960",
        "drift, drift, run, 412.215222, 407.189526, 280.742088, 295.512954, 1.380893, 4.612301185",
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
        assertThat(s.oilK()).isCloseTo(oilK, within(KELVIN));
        assertThat(f.limitingAmbientK()).isCloseTo(limitingK, within(KELVIN));
        assertThat(f.boilingAmbientK()).isCloseTo(boilingK, within(KELVIN));
        assertThat(s.airMassKgPerS()).isCloseTo(airKgPerS, within(2e-6));
        assertThat(1e3 * s.radiatorM3PerS()).isCloseTo(litresPerS, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({
        "road, 365.449899, 378.155047, 903.014334",
        "track, 369.981225, 365.875553, 226.964912",
        "drift, 379.238701, 377.913306, 902.319535"
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
