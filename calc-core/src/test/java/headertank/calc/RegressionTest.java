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
        "road, street, jam, 358.307855, 361.344038, 354.441725, 372.145855, 0.680229, 0.042359453",
        "road, street, hill, 364.878309, 379.558381, 328.398396, 345.966992, 0.740354, 0.998335765",
        "road, street, motorway, 363.602403, 379.603331, 336.277251, 354.959190, 1.481060, 1.001207182",
        "road, track, laps, 367.184753, 409.808065, 320.948262, 338.760543, 1.665497, 1.971054674",
        "road, drift, run, 378.937578, 420.539527, 308.828636, 325.630338, 0.927542, 2.025553020",
        "road, drift, queue, 358.398245, 361.998068, 356.671098, 374.634795, 0.685459, 0.046613766",
        "track, street, jam, 351.566464, 354.786288, 369.967298, 388.633430, 0.873188, 0.027911767",
        "track, street, hill, 352.902683, 359.172529, 344.733214, 362.674264, 0.975974, 0.295854887",
        "track, street, motorway, 353.177725, 357.091784, 350.621669, 369.484285, 2.076295, 0.407190691",
        "track, track, laps, 367.824953, 367.420475, 317.248893, 334.657785, 2.302144, 3.240049404",
        "track, drift, run, 383.539719, 393.381925, 302.818448, 318.996939, 1.217316, 3.248241375",
        "track, drift, queue, 352.167741, 355.633498, 360.588815, 378.916694, 0.848417, 0.056812855",
        "drift, street, jam, 351.854891, 356.870303, 363.487622, 381.959134, 0.964289, 0.055746757",
        "drift, street, hill, 355.590997, 363.089016, 333.439436, 350.744155, 1.133398, 1.477937559",
        "drift, street, motorway, 353.799974, 359.472188, 345.363602, 364.011438, 2.473401, 0.856706089",
        "drift, track, laps, 384.363390, 396.415284, 302.079938, 318.836051, 2.724027, 4.594123101",
        "drift, drift, run, 410.176056, 438.901092, 281.757628, 296.914601, 1.404779, 4.612301185",
        "drift, drift, queue, 352.272027, 357.720878, 355.221560, 373.358224, 0.939211, 0.091152846"
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
        "road, 366.142461, 395.477185, 454.649839",
        "track, 362.847271, 378.357936, 902.408978",
        "drift, 370.220871, 408.743260, 902.684160"
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
