package headertank.calc.transients;

import headertank.calc.carspec.BuildField;
import headertank.calc.choice.FanDrive;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.electric.Battery;
import headertank.calc.electric.ElectricBalance;
import headertank.calc.rating.Plant;
import headertank.calc.result.RunResult;
import headertank.calc.sensor.SensorReading;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.sampling.ODEStateInterpolator;
import org.hipparchus.ode.sampling.ODEStepHandler;

/**
 * Watches the steps of a run. Times and swings are taken at the ends of steps, with a straight line where a limit is
 * crossed, peaks come from {@link Peaks}; the trace is interpolated inside a step by a cubic through both ends and their slopes.
 */
final class Recorder implements ODEStepHandler {

    private final Plant plant;
    private final LumpedCar car;
    private final Fans fans;
    private final Peaks peaks;
    private final double limitK;
    private final double outputS;
    private final int gauge;
    private final List<RunResult.Sample> trace = new ArrayList<>();
    private final List<RunResult.PhaseSummary> phases = new ArrayList<>();
    private final SensorWatch[] sensors = SensorWatch.all();
    private final double[] between = new double[LumpedCar.STATES];

    private OperatingPoint point;
    private double phaseStartS;
    private double phaseStartK;
    private double phasePeakK;
    private double phasePeakOilK;
    private double phaseAboveS;
    private double phaseFanAs;
    private double settleFromS;
    private Swing swing = new Swing();
    private Swing gaugeSwing = new Swing();
    private double longestS;
    private RunResult.Settled settled = new RunResult.Settled(Double.NaN, 0, 0, "");

    private long outputs;
    private double aboveS;
    private double firstAboveS = Double.NaN;
    private double belowWindowS;
    private double aboveWindowS;
    private double peakFanA;
    private double peakLoadA;
    private double lowestV = ElectricBalance.CHARGING_V;
    private double deficitS;
    private double peakAirK;
    private double peakPanelK;
    private double peakTouchK;

    Recorder(Plant plant, LumpedCar car, Fans fans, Peaks peaks, double outputHz) {
        this.peaks = peaks;
        this.plant = plant;
        this.car = car;
        this.fans = fans;
        this.limitK = plant.resolved().value(BuildField.COOLANT_LIMIT);
        this.outputS = outputHz > 0 ? 1 / outputHz : Double.POSITIVE_INFINITY;
        this.gauge = LumpedCar.SENSOR + plant.gaugeSensor().ordinal();
        this.outputs = outputHz > 0 ? 0 : Long.MAX_VALUE;
    }

    void beginPhase(OperatingPoint at, double timeS, double seconds, double[] y) {
        point = at;
        phaseStartS = timeS;
        phaseStartK = y[LumpedCar.BLOCK];
        phasePeakK = phaseStartK;
        phasePeakOilK = y[LumpedCar.OIL];
        phaseAboveS = 0;
        phaseFanAs = y[LumpedCar.FAN_AS];
        settleFromS = timeS + 0.5 * seconds;
        swing = new Swing();
        gaugeSwing = new Swing();
    }

    void endPhase(double timeS, double[] y) {
        double seconds = timeS - phaseStartS;
        phases.add(new RunResult.PhaseSummary(
                point.id(),
                phaseStartS,
                seconds,
                phaseStartK,
                phasePeakK,
                y[LumpedCar.BLOCK],
                phasePeakOilK,
                phaseAboveS,
                (y[LumpedCar.FAN_AS] - phaseFanAs) / 3600));
        if (car.place().engineOn && seconds >= longestS && swing.seconds() > 0) {
            longestS = seconds;
            settled = new RunResult.Settled(swing.mean(), swing.height(), gaugeSwing.height(), point.id());
        }
    }

    @Override
    public void handleStep(ODEStateInterpolator step) {
        ODEStateAndDerivative from = step.getPreviousState();
        ODEStateAndDerivative to = step.getCurrentState();
        double t0 = from.getTime();
        double t1 = to.getTime();
        double[] y0 = from.getPrimaryState();
        double[] y1 = to.getPrimaryState();
        if (t1 > outputs * outputS || t0 == 0 && outputs == 0) {
            draw(t0, t1, y0, y1, from.getPrimaryDerivative(), to.getPrimaryDerivative());
        }
        watch(t0, t1, y0, y1);
    }

    private void watch(double t0, double t1, double[] y0, double[] y1) {
        double dt = t1 - t0;
        double hot = y1[LumpedCar.BLOCK];
        phasePeakK = Math.max(phasePeakK, peaks.inStepK());
        phasePeakOilK = Math.max(phasePeakOilK, y1[LumpedCar.OIL]);
        double above = dt * shareAbove(y0[LumpedCar.BLOCK], hot, limitK);
        if (above > 0 && Double.isNaN(firstAboveS)) {
            firstAboveS = y0[LumpedCar.BLOCK] > limitK ? t0 : t1 - above;
        }
        aboveS += above;
        phaseAboveS += above;
        Place p = car.place();
        double flow = current(t0, t1, y0, y1, p);
        for (int i = 0; i < sensors.length; i++) {
            sensors[i].watch(t0, t1, error(y0, i), error(y1, i), flow);
        }
        if (p.engineOn) {
            aboveWindowS += dt * shareAbove(y0[LumpedCar.BLOCK], hot, RunResult.Window.TO_K);
            belowWindowS += dt * (1 - shareAbove(y0[LumpedCar.BLOCK], hot, RunResult.Window.FROM_K));
        }
        if (t1 > settleFromS) {
            swing.add(dt, y0[LumpedCar.BLOCK], hot);
            gaugeSwing.add(dt, y0[gauge], y1[gauge]);
        }
        double air = y1[LumpedCar.HOOD];
        peakAirK = Math.max(peakAirK, air);
        peakPanelK = Math.max(peakPanelK, p.hood.innerK(air));
        peakTouchK = Math.max(peakTouchK, p.hood.outerK(air));
    }

    /** Looks at both ends: at the first the starting current of fans that have just been switched on. */
    private double current(double t0, double t1, double[] y0, double[] y1, Place p) {
        load(t0, y0, p);
        double deficit = load(t1, y1, p);
        if (p.engineOn && deficit > 1e-9) {
            deficitS += t1 - t0;
        }
        Cooling table = p.cooling();
        table.at(y1[LumpedCar.BLOCK], car.lift(y1), car.duty(t1, y1));
        return table.radiatorM3PerS() / plant.pump().maxFlowM3PerS();
    }

    private double load(double t, double[] y, Place p) {
        double duty = car.duty(t, y);
        double fanA = p.fanCurrentA(duty, fans.inrush(t));
        double deficit = p.baseLoadA + fanA - p.supplyA;
        peakFanA = Math.max(peakFanA, fanA);
        peakLoadA = Math.max(peakLoadA, p.baseLoadA + fanA);
        if (p.engineOn) {
            lowestV = Math.min(lowestV, voltageV(duty, deficit, p));
        }
        return deficit;
    }

    private static double voltageV(double duty, double deficit, Place p) {
        double balance = deficit > 0 && duty == 0
                ? ElectricBalance.BATTERY_V
                : ElectricBalance.CHARGING_V * p.fanSpeedFactor(duty);
        return Battery.terminalV(balance, deficit);
    }

    private double error(double[] y, int sensor) {
        return y[LumpedCar.SENSOR + sensor] - (y[LumpedCar.BLOCK] + SensorReading.HEAD_BIAS_K);
    }

    private static double shareAbove(double a, double b, double limit) {
        if (a > limit == b > limit) {
            return a > limit ? 1 : 0;
        }
        double share = (Math.max(a, b) - limit) / Math.abs(b - a);
        return Math.max(0, Math.min(1, share));
    }

    private void draw(double t0, double t1, double[] y0, double[] y1, double[] d0, double[] d1) {
        double h = t1 - t0;
        for (double t = outputs * outputS; t < t1; t = ++outputs * outputS) {
            double x = Math.max(0, (t - t0) / h);
            double a = (1 + 2 * x) * (1 - x) * (1 - x);
            double b = x * (1 - x) * (1 - x) * h;
            double c = x * x * (3 - 2 * x);
            double e = x * x * (x - 1) * h;
            for (int i = 0; i < LumpedCar.IN_J; i++) {
                between[i] = a * y0[i] + b * d0[i] + c * y1[i] + e * d1[i];
            }
            trace.add(sample(t, between));
        }
    }

    private RunResult.Sample sample(double t, double[] y) {
        Place p = car.place();
        double duty = car.duty(t, y);
        double lift = car.lift(y);
        double fanA = p.fanCurrentA(duty, fans.inrush(t));
        double shown = duty;
        if (plant.fanDrive() == FanDrive.CLUTCH) {
            p.cooling().at(y[LumpedCar.BLOCK], lift, duty);
            shown = p.cooling().fanDuty();
        }
        return new RunResult.Sample(
                t,
                point.id(),
                y[LumpedCar.BLOCK],
                y[LumpedCar.OIL],
                y[gauge],
                shown,
                fanA,
                y[LumpedCar.BLOCK] + SensorReading.HEAD_BIAS_K,
                y[car.fanSensor()],
                voltageV(duty, p.baseLoadA + fanA - p.supplyA, p),
                point.roadSpeedMPerS(),
                lift,
                y[LumpedCar.RADIATOR],
                y[LumpedCar.HOOD]);
    }

    RunResult result(double[] end, double storedJ, RunResult.Numerics numerics) {
        List<RunResult.SensorError> errors = new ArrayList<>();
        for (SensorWatch s : sensors) {
            errors.add(s.result());
        }
        return new RunResult(
                peaks.result(plant),
                new RunResult.AboveLimit(aboveS, firstAboveS),
                LumpedCar.charge(end),
                fans.starts(),
                LumpedCar.energy(end, storedJ),
                trace,
                settled,
                new RunResult.Window(belowWindowS, aboveWindowS),
                new RunResult.Current(peakFanA, peakLoadA, lowestV, deficitS / 60),
                new RunResult.Hood(peakAirK, peakPanelK, peakTouchK),
                errors,
                phases,
                numerics);
    }
}
