package headertank.calc.learning;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.evidence.WorkshopReadings;
import headertank.calc.rating.Plant;
import headertank.calc.result.IdleExpectation.Figure;
import headertank.calc.transients.IdleWarmUp;
import headertank.calc.workshop.IdleInWorkshop;
import java.util.ArrayList;
import java.util.List;

/**
 * The readings of a cold start in the workshop. How far a reading may be off is taken for nine of ten readings, 1.645 standard
 * deviations. A figure that the car as expected does not reach within the hour says nothing.
 */
final class WorkshopLikelihood implements Likelihood {

    private static final double NINE_OF_TEN = 1.645;

    private final WorkshopReadings seen;
    private final List<Figure> figures = new ArrayList<>();

    WorkshopLikelihood(WorkshopReadings seen, Resolved car) {
        this.seen = seen;
        IdleWarmUp expected = IdleWarmUp.of(Plant.of(inWorkshop(car)));
        seen.readings().keySet().stream()
                .filter(f -> expected.figure(f).isPresent())
                .forEach(figures::add);
    }

    @Override
    public double[] residuals(Candidate car, double[] nuisance) {
        IdleWarmUp run = IdleWarmUp.of(car.plant(this::inWorkshop));
        double[] residuals = new double[figures.size()];
        for (int i = 0; i < residuals.length; i++) {
            Figure f = figures.get(i);
            if (run.figure(f).isEmpty()) {
                return null;
            }
            double read = seen.readings().get(f);
            double sigma = IdleInWorkshop.readingAllowance(f, read) / NINE_OF_TEN;
            residuals[i] = (read - run.figure(f).getAsDouble()) / sigma;
        }
        return residuals;
    }

    private Resolved inWorkshop(Resolved car) {
        return IdleWarmUp.nothingSwitchedOn(car.with(BuildField.AMBIENT, seen.ambientK()));
    }
}
