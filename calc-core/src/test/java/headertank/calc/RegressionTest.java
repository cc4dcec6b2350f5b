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
        "road, street, jam, 358.308746, 361.344900, 354.386031, 372.089053, 0.679550, 0.042396154",
        "road, street, hill, 364.867182, 379.547841, 328.329979, 345.883390, 0.739594, 0.996894549",
        "road, street, motorway, 363.688328, 379.680464, 336.216703, 354.880653, 1.479913, 1.008960962",
        "road, track, laps, 367.267085, 409.881055, 320.840619, 338.650939, 1.664256, 1.974411887",
        "road, drift, run, 379.062455, 420.655527, 308.713147, 325.512028, 0.926680, 2.024373744",
        "road, drift, queue, 358.399189, 361.998984, 356.612965, 374.576154, 0.684794, 0.046654463",
        "track, street, jam, 351.566561, 354.786302, 369.939160, 388.604315, 0.871688, 0.027914042",
        "track, street, hill, 352.911830, 359.173280, 344.662718, 362.600128, 0.974235, 0.298090133",
        "track, street, motorway, 353.187110, 357.092203, 350.559464, 369.420043, 2.073176, 0.409945137",
        "track, track, laps, 367.951551, 367.443577, 317.128037, 334.532495, 2.298706, 3.238901931",
        "track, drift, run, 383.701329, 393.425860, 302.681163, 318.853220, 1.215136, 3.247159612",
        "track, drift, queue, 352.168306, 355.633587, 360.541463, 378.867619, 0.846920, 0.056847425",
        "drift, street, jam, 351.855169, 356.870331, 363.445744, 381.931766, 0.962381, 0.055764008",
        "drift, street, hill, 355.648446, 363.092133, 333.355699, 350.653502, 1.131458, 1.497749710",
        "drift, street, motorway, 353.818783, 359.472757, 345.286871, 363.932138, 2.468917, 0.865284621",
        "drift, track, laps, 384.536606, 396.439750, 301.927676, 318.677978, 2.718993, 4.592441163",
        "drift, drift, run, 410.404324, 438.950342, 281.589760, 296.738811, 1.401916, 4.610585496",
        "drift, drift, queue, 352.273121, 357.721000, 355.162928, 373.319843, 0.937307, 0.091258504"
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
        "road, 366.161553, 395.486148, 454.660405",
        "track, 362.877260, 378.360915, 902.411690",
        "drift, 370.271611, 408.749183, 902.687279"
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
