package headertank.calc.rating;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.Builds;
import headertank.calc.Rater;
import headertank.calc.carspec.Resolved;
import headertank.calc.duty.StandardDuties;
import headertank.calc.radiator.PerformanceSheet;
import headertank.calc.radiator.Radiator;
import headertank.calc.radiator.RadiatorFactors;
import headertank.calc.result.PointRating;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A maker's sheet in place of the core's model, from the build to the rating. */
class FittedCoreTest {

    private static final double AIR_IN_K = 303.15;
    private static final double COOLANT_IN_K = 363.15;

    @Test
    void aWeakSheetMakesTheCarHotter() {
        Resolved car = Rater.standard().resolve(Builds.road());
        Plant asModelled = Plant.of(car);
        RadiatorFactors weak = new RadiatorFactors(0.8, 1, 1);
        Radiator truth = new Radiator(asModelled.radiator().spec(), weak);
        List<PerformanceSheet.Point> sheet = new ArrayList<>();
        for (double air : new double[] {0.8, 1.4, 2.0}) {
            double heat = truth.heat(air, AIR_IN_K, 101_325, 1.5e-3, asModelled.coolant(), COOLANT_IN_K)
                    .heatW();
            sheet.add(new PerformanceSheet.Point(air, AIR_IN_K, 1.5e-3, COOLANT_IN_K, heat));
        }
        PerformanceSheet.Fit fit = new PerformanceSheet(asModelled.coolant(), sheet)
                .fit(asModelled.radiator().spec(), PerformanceSheet.Side.AIR);
        assertThat(fit.factors().airSide()).isCloseTo(0.8, within(1e-6));

        Plant fitted = Plant.of(car, ModelFactors.NOMINAL.withRadiator(fit.factors()));
        PointRating before = PointRater.rate(asModelled, StandardDuties.TRACK.point("laps"));
        PointRating after = PointRater.rate(fitted, StandardDuties.TRACK.point("laps"));
        assertThat(after.coolantMarginK()).isLessThan(before.coolantMarginK() - 1);
        assertThat(after.figures().orElseThrow().limitingAmbientK())
                .isLessThan(before.figures().orElseThrow().limitingAmbientK());
    }
}
