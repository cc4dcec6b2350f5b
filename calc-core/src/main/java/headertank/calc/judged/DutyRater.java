package headertank.calc.judged;

import headertank.calc.carspec.Resolved;
import headertank.calc.duty.Duty;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.duty.Schedule;
import headertank.calc.rating.Margin;
import headertank.calc.rating.Plant;
import headertank.calc.rating.PointRater;
import headertank.calc.rating.SteadySolver;
import headertank.calc.result.Distribution;
import headertank.calc.result.PointRating;
import headertank.calc.result.RunResult;
import headertank.calc.transients.RunSettings;
import headertank.calc.transients.RunSolver;
import headertank.calc.uncertainty.ModelSpread;
import headertank.calc.uncertainty.Sampling;
import headertank.calc.verdict.DutyOutcome;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * One car at one duty, judged as the duty says: by the peak of its run, by steady states of its points, or the worse of both.
 * Points with the engine off have no steady state and count in the run only.
 */
public final class DutyRater {

    /** Outcome of a sample that could not be solved: it counts as beyond every limit. */
    static final double[] FAILED = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};

    private DutyRater() {}

    /** @return the duty as it is expected, without uncertainty */
    public static DutyOutcome outcome(Plant plant, Duty duty) {
        return outcome(plant, duty, duty.schedule().map(s -> RunSolver.run(plant, duty)));
    }

    /**
     * @param run what the duty's schedule does to this car; empty without a schedule
     * @return the duty as it is expected, without uncertainty
     */
    public static DutyOutcome outcome(Plant plant, Duty duty, Optional<RunResult> run) {
        List<PointRating> points = new ArrayList<>();
        for (OperatingPoint p : duty.points()) {
            if (!p.engineOff()) {
                points.add(PointRater.rate(plant, p));
            }
        }
        PointRating worst = null;
        double margin = Double.POSITIVE_INFINITY;
        double boiling = Double.POSITIVE_INFINITY;
        double oil = Double.POSITIVE_INFINITY;
        for (PointRating p : points) {
            if (!decidesSteadily(duty, p.point())) {
                continue;
            }
            if (worst == null || p.coolantMarginK() < margin) {
                worst = p;
                margin = p.coolantMarginK();
            }
            boiling = Math.min(boiling, p.figures().map(f -> f.boilingMarginK()).orElse(Double.NEGATIVE_INFINITY));
            oil = Math.min(oil, p.figures().map(f -> f.oilMarginK()).orElse(Double.NEGATIVE_INFINITY));
        }
        DutyOutcome.Sides sides = new DutyOutcome.Sides(
                worst == null ? "" : worst.point().id(),
                margin,
                run.map(r -> Margin.coolantK(plant.resolved(), r.peaks().coolantK()))
                        .orElse(Double.NaN));
        boolean byRun = false;
        String deciding = worst == null ? firstDriven(duty) : worst.point().id();
        if (run.isPresent() && duty.judged() != Duty.Judged.STEADY) {
            RunResult r = run.get();
            double atPeak = sides.runMarginK();
            if (atPeak <= margin) {
                byRun = true;
                margin = atPeak;
                deciding = causeOfPeak(duty, r.peaks().coolantAtS());
            }
            boiling = Math.min(boiling, r.peaks().lowestBoilingMarginK());
            oil = Math.min(oil, Margin.oilK(plant.resolved(), r.peaks().oilK()));
        }
        return new DutyOutcome(
                duty,
                deciding,
                byRun,
                margin,
                Optional.empty(),
                Double.NaN,
                Double.NaN,
                boiling,
                oil,
                Optional.empty(),
                points,
                run,
                sides);
    }

    /** @return coolant, boiling and oil margin that decide [K], without the rest of the figures */
    public static double[] margins(Plant plant, Duty duty) {
        return margins(pointId -> plant, "", duty);
    }

    /**
     * @param at the car's models at each operating point
     * @param ofRun id of the point whose models the run goes by
     */
    private static double[] margins(Function<String, Plant> at, String ofRun, Duty duty) {
        double coolant = Double.POSITIVE_INFINITY;
        double boiling = Double.POSITIVE_INFINITY;
        double oil = Double.POSITIVE_INFINITY;
        for (OperatingPoint p : duty.points()) {
            if (decidesSteadily(duty, p)) {
                double[] m = PointRater.margins(at.apply(p.id()), p);
                coolant = Math.min(coolant, m[0]);
                boiling = Math.min(boiling, m[1]);
                oil = Math.min(oil, m[2]);
            }
        }
        if (duty.judged() != Duty.Judged.STEADY) {
            Plant plant = at.apply(ofRun);
            RunResult run = RunSolver.run(plant, duty, RunSettings.PEAKS_ONLY);
            coolant = Math.min(
                    coolant, Margin.coolantK(plant.resolved(), run.peaks().coolantK()));
            boiling = Math.min(boiling, run.peaks().lowestBoilingMarginK());
            oil = Math.min(oil, Margin.oilK(plant.resolved(), run.peaks().oilK()));
        }
        return new double[] {coolant, boiling, oil};
    }

    /**
     * Samples an outcome: once as many cars as are asked for, and as many again until the sampling errors of the probabilities
     * that coolant and oil pass their limits are at most a quarter of the distance to each probability that a verdict turns at.
     *
     * @param car the car
     * @param nominal what it is expected to do
     * @param sampling how to sample
     * @return the outcome with its sampled margin and probabilities, the run with the spreads of the point that decides; a
     *     sample outside what a model accepts counts as failed
     * @throws IllegalStateException when the thread that asks is interrupted
     */
    public static DutyOutcome sampled(Resolved car, DutyOutcome nominal, Samples sampling) {
        Map<String, ModelSpread> spreads = new HashMap<>();
        nominal.points().forEach(p -> spreads.put(p.point().id(), ModelSpread.of(car, p)));
        List<double[]> margins = new ArrayList<>();
        long seed = sampling.seed();
        boolean informed = false;
        do {
            if (Thread.currentThread().isInterrupted()) {
                throw new IllegalStateException("the rating was told to end");
            }
            Sampling cars = Censored.sampling(car, sampling.atOnce(), seed++);
            informed |= cars.informed();
            margins.addAll(cars.each(
                    sampled -> margins(id -> sampled.at(spreads.get(id)), nominal.decidingPointId(), nominal.duty()),
                    FAILED));
        } while (margins.size() + sampling.atOnce() <= sampling.most() && !isSure(margins, sampling.turns()));
        double[] coolant = margins.stream().mapToDouble(m -> m[0]).toArray();
        double[] boiling = margins.stream().mapToDouble(m -> m[1]).toArray();
        Distribution margin = Distribution.of(coolant);
        Distribution oil =
                Distribution.of(margins.stream().mapToDouble(m -> m[2]).toArray());
        DutyOutcome outcome =
                nominal.sampled(margin, Distribution.shareBelow(coolant, 0), Distribution.shareBelow(boiling, 0), oil);
        return informed
                ? outcome.expecting(
                        more(margin.median(), nominal.coolantMarginK()), more(oil.median(), nominal.oilMarginK()))
                : outcome;
    }

    private static double more(double median, double expected) {
        double more = median - expected;
        return more > 0 && Double.isFinite(more) ? more : 0;
    }

    private static boolean isSure(List<double[]> margins, List<Double> turns) {
        return isSure(margins, 0, turns) && isSure(margins, 2, turns);
    }

    private static boolean isSure(List<double[]> margins, int which, List<Double> turns) {
        double p = Distribution.shareBelow(
                margins.stream().mapToDouble(m -> m[which]).toArray(), 0);
        double error = Distribution.standardError(p, margins.size());
        return turns.stream().allMatch(t -> error <= 0.25 * Math.abs(p - t));
    }

    /** @return coolant margin that decides [K]; without a steady state that of the hottest temperature tried */
    public static double finiteMarginK(Plant plant, Duty duty) {
        double margin = margins(plant, duty)[0];
        return Double.isInfinite(margin) ? Margin.coolantK(plant.resolved(), SteadySolver.HOTTEST_K) : margin;
    }

    private static boolean decidesSteadily(Duty duty, OperatingPoint point) {
        return !point.engineOff() && (duty.judged() != Duty.Judged.RUN_AND_IDLE || point.idles());
    }

    private static String firstDriven(Duty duty) {
        return duty.points().stream()
                .filter(p -> !p.engineOff())
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("duty " + duty.id() + " never has its engine on"))
                .id();
    }

    /**
     * The phase that heated the car: the last one at or before the peak that neither idles nor has the engine off, if it ended
     * less than a minute before; a soak is never named, what came before it is.
     */
    private static String causeOfPeak(Duty duty, double peakAtS) {
        double end = 0;
        String cause = firstDriven(duty);
        double causeEnd = Double.NEGATIVE_INFINITY;
        for (Schedule.Phase phase : duty.schedule().orElseThrow().phases()) {
            double start = end;
            end += phase.seconds();
            if (start > peakAtS) {
                break;
            }
            OperatingPoint at = duty.point(phase.pointId());
            if (at.engineOff()) {
                continue;
            }
            boolean idles = at.idles();
            if (!idles || peakAtS - causeEnd > 60) {
                cause = phase.pointId();
                causeEnd = idles ? causeEnd : end;
            }
        }
        return cause;
    }
}
