package headertank.calc.rating;

import headertank.calc.carspec.BuildField;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.engine.HeatSplit;
import headertank.calc.engine.TaylorCrossCheck;
import headertank.calc.quantity.Note;
import headertank.calc.radiator.RadiatorPoint;
import headertank.calc.radiator.RadiatorSpread;
import headertank.calc.result.Balance;
import headertank.calc.result.Figures;
import headertank.calc.result.PointRating;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Rates a car at one operating point: steady state, margins, limiting ambients. */
public final class PointRater {

    private PointRater() {}

    /** @return the point with all its figures */
    public static PointRating rate(Plant plant, OperatingPoint point) {
        SteadySolver solver = new SteadySolver(plant, point);
        Balance balance = solver.solve();
        List<Note> notes = new ArrayList<>(solver.load().notes());
        notes.addAll(solver.load().heat().notes());
        notes.addAll(wallHeat(plant, solver.load().heat()));
        RadiatorPoint radiator = solver.radiator();
        List<Note> ofCore = CorePlan.notes(plant, radiator);
        RadiatorSpread spread = plant.radiator().spread(radiator, ofCore);
        notes.addAll(ofCore);
        if (!(balance instanceof Balance.Steady s)) {
            return new PointRating(point, balance, Optional.empty(), notes, spread);
        }
        notes.addAll(plant.coolant().notes(s.engineOutK()));
        double limit = plant.resolved().value(BuildField.COOLANT_LIMIT);
        double coolantMargin = Margin.coolantK(plant.resolved(), s.engineOutK());
        double boilingMargin = Margin.boilingK(s.boilingK(), s.engineOutK());
        double difference = s.engineOutK() - s.air().inK();
        Figures figures = new Figures(
                coolantMargin,
                Margin.oilK(plant.resolved(), s.oil().oilK()),
                boilingMargin,
                solver.ambientForCoolantK(limit),
                s.ambientK() + coolantMargin,
                solver.ambientForCoolantK(s.boilingK()),
                s.ambientK() + boilingMargin,
                difference,
                difference > 0 ? s.core().heatW() / difference : 0,
                s.coolant().radiatorOutK() - s.air().inK());
        return new PointRating(point, balance, Optional.of(figures), notes, spread);
    }

    /** What a second way to the engine's heat says to the first, with the coolant at its limit. */
    private static List<Note> wallHeat(Plant plant, HeatSplit heat) {
        double limit = plant.resolved().value(BuildField.COOLANT_LIMIT);
        return TaylorCrossCheck.notes(plant.engine(), heat, limit);
    }

    /**
     * Only the margins, for sampling.
     *
     * @return coolant margin, boiling margin and oil margin [K]; all minus infinity when there is no steady state
     */
    public static double[] margins(Plant plant, OperatingPoint point) {
        Balance balance = new SteadySolver(plant, point).solve();
        if (balance instanceof Balance.Steady s) {
            return new double[] {
                Margin.coolantK(plant.resolved(), s.engineOutK()),
                Margin.boilingK(s.boilingK(), s.engineOutK()),
                Margin.oilK(plant.resolved(), s.oil().oilK())
            };
        }
        return new double[] {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
    }
}
