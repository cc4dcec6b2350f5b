package headertank.calc.transients;

import headertank.calc.control.FanControlSpec;
import headertank.calc.duty.Duty;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.duty.Schedule;
import headertank.calc.rating.Plant;
import headertank.calc.result.RunResult;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.nonstiff.DormandPrince54Integrator;

/**
 * Drives a car through a schedule: lumped masses of engine metal, coolant in block and head, coolant in hoses and radiator,
 * core metal, oil and the air under the hood, with thermostat and sensors that lag ({@link LumpedCar} has the equations).
 *
 * <p>Dormand and Prince's method of order 5(4) with an absolute tolerance of 1 mK and steps of at most one second; it stops
 * exactly at ends of phases, at edges of the fan control and where a soft start or a starting current ends. Sums of energy
 * are linear invariants, which the method keeps to rounding. Deterministic.
 */
public final class RunSolver {

    private static final double SHORTEST_S = 1e-9;
    private static final double LONGEST_S = 1;
    private static final double LONGEST_FOR_PEAKS_S = 3;
    private static final double FIRST_S = 0.1;
    private static final double TOLERANCE_K = 1e-3;
    private static final double UNCONTROLLED = 1e12;
    private static final double NOTHING_S = 1e-6;
    private static final int EVALUATIONS_OF_A_STEP = 6;

    /** Speed of an electric pump that runs on, over its full speed [-]; common practice, no source. */
    private static final double RUN_ON_SHARE = 0.5;

    /** Before the id of a point while the pump runs on: a character that no id has. */
    private static final String RUN_ON = "\0";

    private final Plant plant;
    private final Duty duty;
    private final Masses masses;
    private final Fans fans;
    private final LumpedCar car;
    private final Peaks peaks;

    /** Nothing when only peaks are wanted. */
    private final Recorder recorder;

    /** Nothing when only peaks are wanted. */
    private final DormandPrince54Integrator integrator;

    /** Nothing when more than peaks is wanted. */
    private final PeakStepper stepper;

    private final Map<String, PointInRun> places = new HashMap<>();

    private double[] y;
    private double time;
    private int restarts;
    private int events;
    private double eventErrorK;

    private RunSolver(Plant whole, Duty duty, RunSettings settings, double startK) {
        this.plant = settings.faults().left(whole);
        this.duty = duty;
        this.masses = Masses.of(plant);
        FanControlSpec control = settings.control().orElse(plant.control());
        this.fans = new Fans(plant, control, settings.faults().noneTurns(whole));
        this.car = new LumpedCar(plant, masses, fans, !settings.peaksOnly());
        this.y = new double[LumpedCar.STATES];
        Arrays.fill(y, 0, LumpedCar.IN_J, startK);
        y[LumpedCar.FRICTION] = 0;
        this.peaks = new Peaks(car, y);
        if (settings.peaksOnly()) {
            this.recorder = null;
            this.integrator = null;
            this.stepper = new PeakStepper(car, peaks, TOLERANCE_K, SHORTEST_S, LONGEST_FOR_PEAKS_S);
        } else {
            this.stepper = null;
            this.integrator = integrator(LONGEST_S);
            integrator.addStepHandler(peaks);
            this.recorder = new Recorder(plant, car, fans, peaks, settings.outputHz());
            integrator.addStepHandler(recorder);
        }
    }

    /** @return the method with its tolerances and steps of up to so long [s] */
    static DormandPrince54Integrator integrator(double longestS) {
        double[] absolute = new double[LumpedCar.STATES];
        Arrays.fill(absolute, 0, LumpedCar.IN_J, TOLERANCE_K);
        Arrays.fill(absolute, LumpedCar.IN_J, LumpedCar.STATES, UNCONTROLLED);
        return new DormandPrince54Integrator(SHORTEST_S, longestS, absolute, new double[LumpedCar.STATES]);
    }

    /** The run with {@link RunSettings#STANDARD}. */
    public static RunResult run(Plant plant, Duty duty) {
        return run(plant, duty, RunSettings.STANDARD);
    }

    /**
     * @param plant the car
     * @param duty a duty with a schedule
     * @param settings control, faults and output
     * @return what the schedule does to the car
     * @throws IllegalArgumentException when the duty has no schedule
     */
    public static RunResult run(Plant plant, Duty duty, RunSettings settings) {
        Schedule schedule = duty.schedule()
                .orElseThrow(() -> new IllegalArgumentException("duty " + duty.id() + " has no schedule"));
        return new RunSolver(plant, duty, settings, schedule.startCoolantK()).drive(schedule);
    }

    private RunResult drive(Schedule schedule) {
        boolean first = true;
        double storedAtStart = 0;
        for (Schedule.Phase phase : schedule.phases()) {
            PointInRun place = places.computeIfAbsent(phase.pointId(), id -> new PointInRun(plant, duty.point(id)));
            if (first) {
                y[LumpedCar.HOOD] = place.ambientK;
                storedAtStart = masses.storedJ(y);
                first = false;
            }
            car.enter(place, time);
            if (recorder != null) {
                recorder.beginPhase(duty.point(phase.pointId()), time, phase.seconds(), y);
            }
            double end = time + phase.seconds();
            double pumpStops = Math.min(end, car.offSinceS() + plant.pumpRunOnS());
            if (!place.engineOn && pumpStops > time + NOTHING_S) {
                PointInRun runOn = runOn(duty.point(phase.pointId()));
                car.enter(runOn, time);
                stay(runOn, pumpStops);
                car.enter(place, time);
            }
            stay(place, end);
            if (recorder != null) {
                recorder.endPhase(time, y);
            }
        }
        int steps = peaks.steps();
        int tried = (car.evaluations() - restarts) / EVALUATIONS_OF_A_STEP;
        RunResult.Numerics numerics =
                new RunResult.Numerics(steps, Math.max(0, tried - steps), car.evaluations(), events, eventErrorK);
        double storedJ = masses.storedJ(y) - storedAtStart;
        return recorder == null ? peaksOnly(storedJ, numerics) : recorder.result(y, storedJ, numerics);
    }

    /** The same point while the electric pump still runs. */
    private PointInRun runOn(OperatingPoint off) {
        return places.computeIfAbsent(RUN_ON + off.id(), id -> new PointInRun(plant, off.withPumpRunOn(RUN_ON_SHARE)));
    }

    private RunResult peaksOnly(double storedJ, RunResult.Numerics numerics) {
        double no = Double.NaN;
        return new RunResult(
                peaks.result(plant),
                new RunResult.AboveLimit(no, no),
                LumpedCar.charge(y),
                fans.starts(),
                LumpedCar.energy(y, storedJ),
                List.of(),
                new RunResult.Settled(no, no, no, ""),
                new RunResult.Window(no, no),
                new RunResult.Current(no, no, no, no),
                new RunResult.Hood(no, no, no),
                List.of(),
                List.of(),
                numerics);
    }

    private void stay(PointInRun place, double end) {
        while (time < end - NOTHING_S) {
            fans.look(time, y[car.fanSensor()], place.fansMayRun);
            double until = Math.min(end, fans.nextKinkS(time));
            if (stepper != null) {
                peaksUntil(until);
                continue;
            }
            FanEdge up = edge(fans.upK(), true);
            FanEdge down = edge(fans.downK(), false);
            integrator.setInitialStepSize(Math.min(FIRST_S, until - time));
            restarts++;
            ODEStateAndDerivative reached = integrator.integrate(car, new ODEState(time, y), until);
            time = reached.getTime();
            y = reached.getPrimaryState();
            integrator.clearEventDetectors();
            take(up);
            take(down);
        }
        time = end;
    }

    private void peaksUntil(double until) {
        restarts++;
        time = stepper.advance(time, y, until, Math.min(FIRST_S, until - time), fans.upK(), fans.downK());
        if (stepper.hit() != 0) {
            fans.step(time, stepper.hit() > 0);
            events++;
            eventErrorK = Math.max(eventErrorK, stepper.edgeErrorK());
        }
    }

    private FanEdge edge(double atK, boolean up) {
        if (Double.isInfinite(atK)) {
            return null;
        }
        FanEdge edge = new FanEdge(car.fanSensor(), atK, up);
        integrator.addEventDetector(edge);
        return edge;
    }

    private void take(FanEdge edge) {
        if (edge != null && edge.hit()) {
            fans.step(time, edge.up());
            events++;
            eventErrorK = Math.max(eventErrorK, edge.errorK());
        }
    }
}
