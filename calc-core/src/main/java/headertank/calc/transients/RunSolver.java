package headertank.calc.transients;

import headertank.calc.build.BuildField;
import headertank.calc.control.FanController;
import headertank.calc.coolant.Thermostat;
import headertank.calc.duty.Duty;
import headertank.calc.duty.Schedule;
import headertank.calc.oil.OilBalance;
import headertank.calc.rating.Plant;
import headertank.calc.rating.SteadySolver;
import headertank.calc.sensor.SensorMount;
import headertank.calc.sensor.SensorPlacement;
import headertank.calc.sensor.SensorReading;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Drives a car through a schedule: engine metal T_m, coolant in the block T_b, coolant on the radiator side T_r and oil T_o
 * as lumped masses, thermostat and sensors as first-order lags.
 *
 * <p>{@code C_m T_m' = Q - UA_m (T_m - T_b)}; {@code C_b T_b' = UA_m (T_m - T_b) + UA_oc (T_o - T_b) - C_c (T_b - T_r) -
 * UA_s (T_b - T_uh)}; {@code C_r T_r' = C_c (T_b - T_r) - C_c e/(1-e) (T_r - T_ai)}; {@code C_o T_o' = Q_oil - UA_oc (T_o -
 * T_b) - UA_oa (T_o - T_a)}, with the flows and the effectiveness e of the steady air and coolant balances at the present
 * lift and fan duty (quasi-steady; derived). At rest it returns the steady solver's answer.
 *
 * <p>Heun's method with a step of a quarter second, split further where a time constant asks for it; thermostat, sensors
 * and fan control move once per step.
 */
public final class RunSolver {

    private static final double STEP_S = 0.25;
    private static final double THERMOSTAT_LAG_S = 8;
    private static final double TRACE_S = 3;
    private static final double STABLE = 0.5;

    private final Plant plant;
    private final Duty duty;
    private final Masses masses;
    private final Map<String, CoolingTable> tables = new HashMap<>();
    private final Lag thermostatLag = new Lag();
    private final Lag fanSensorLag = new Lag();
    private final Lag gaugeLag = new Lag();

    private double metalK;
    private double blockK;
    private double radiatorK;
    private double oilK;
    private double inJ;
    private double outJ;

    private RunSolver(Plant plant, Duty duty) {
        this.plant = plant;
        this.duty = duty;
        this.masses = Masses.of(plant);
    }

    /**
     * @param plant the car
     * @param duty a duty with a schedule
     * @return what the schedule does to the car
     * @throws IllegalArgumentException when the duty has no schedule
     */
    public static RunResult run(Plant plant, Duty duty) {
        Schedule schedule = duty.schedule()
                .orElseThrow(() -> new IllegalArgumentException("duty " + duty.id() + " has no schedule"));
        return new RunSolver(plant, duty).drive(schedule);
    }

    private RunResult drive(Schedule schedule) {
        double start = schedule.startCoolantK();
        metalK = start;
        blockK = start;
        radiatorK = start;
        oilK = start;
        double thermostatK = start;
        double fanSensorK = start;
        double gaugeK = start;
        double fanDuty = 0;
        double limit = plant.resolved().value(BuildField.COOLANT_LIMIT);
        double peak = start;
        double peakAt = 0;
        double peakOil = start;
        double above = 0;
        double firstAbove = Double.NaN;
        double fanAs = 0;
        double batteryAs = 0;
        int starts = 0;
        double time = 0;
        double nextTrace = 0;
        double storedAtStart = storedJ();
        List<RunResult.Sample> trace = new ArrayList<>();
        for (Schedule.Phase phase : schedule.phases()) {
            CoolingTable table = tables.computeIfAbsent(
                    phase.pointId(), id -> new CoolingTable(new SteadySolver(plant, duty.point(id))));
            double oilToAir = OilBalance.toAirWPerK(plant.oil(), table.solver().effectiveSpeedMPerS());
            double end = time + phase.seconds();
            while (time < end - 1e-9) {
                double dt = Math.min(STEP_S, end - time);
                double before = fanDuty;
                fanDuty = plant.fanDrive() == Plant.FanDrive.ELECTRIC
                        ? FanController.duty(plant.control(), fanSensorK, fanDuty)
                        : 0;
                if (fanDuty > 0 && before == 0) {
                    starts++;
                }
                double lift = Thermostat.lift(plant.thermostat(), thermostatK);
                table.at(blockK, lift, fanDuty);
                if (time >= nextTrace) {
                    trace.add(new RunResult.Sample(
                            time, phase.pointId(), blockK, oilK, gaugeK, table.fanDuty(), table.fanCurrentA()));
                    nextTrace += TRACE_S;
                }
                fanAs += dt * table.fanCurrentA();
                batteryAs += dt * table.deficitA();
                advance(dt, table, oilToAir);
                thermostatK = thermostatLag.step(thermostatK, blockK, THERMOSTAT_LAG_S, dt);
                fanSensorK = sensed(fanSensorLag, plant.fanSensor(), fanSensorK, table, dt);
                gaugeK = sensed(gaugeLag, plant.gaugeSensor(), gaugeK, table, dt);
                time += dt;
                if (blockK > peak) {
                    peak = blockK;
                    peakAt = time;
                }
                peakOil = Math.max(peakOil, oilK);
                if (blockK > limit) {
                    above += dt;
                    if (Double.isNaN(firstAbove)) {
                        firstAbove = time;
                    }
                }
            }
        }
        double stored = storedJ() - storedAtStart;
        return new RunResult(
                peak,
                peakAt,
                peakOil,
                plant.boilingK() - peak,
                above,
                firstAbove,
                fanAs / 3600,
                batteryAs / 3600,
                starts,
                stored,
                (inJ - outJ - stored) / Math.max(inJ, 1),
                trace);
    }

    private double sensed(Lag lag, SensorPlacement place, double shownK, CoolingTable table, double dt) {
        double flow = table.radiatorM3PerS();
        double steady = SensorReading.steadyK(place, blockK, radiatorK, table.ambientK(), flow);
        return lag.step(shownK, steady, SensorReading.lagS(place, SensorMount.WETTED, flow), dt);
    }

    private double storedJ() {
        return masses.metalJPerK() * metalK
                + masses.blockJPerK() * blockK
                + masses.radiatorJPerK() * radiatorK
                + masses.oilJPerK() * oilK;
    }

    private void advance(double seconds, CoolingTable t, double oilToAir) {
        double heat = t.solver().load().coolantW();
        double oilHeat = t.solver().load().oilW();
        double metal = Masses.metalConductanceWPerK(plant, t.pumpM3PerS());
        double oilToCoolant = plant.oil().coolerToCoolantWPerK();
        double surface = plant.surfaceWPerK();
        double capacity = t.capacityRateWPerK();
        double outlet = t.outletConductanceWPerK();
        double airShare = (t.airInK(t.ambientK() + 1) - t.ambientK());
        double hoodShare = (t.underHoodK(t.ambientK() + 1) - t.ambientK());
        double a = t.ambientK();
        double fastest = Math.max(
                (capacity + outlet) / masses.radiatorJPerK(),
                Math.max(
                        (metal + oilToCoolant + capacity + surface) / masses.blockJPerK(),
                        metal / masses.metalJPerK()));
        int steps = (int) Math.max(1, Math.ceil(seconds * fastest / STABLE));
        double h = seconds / steps;
        for (int i = 0; i < steps; i++) {
            double m1 = heat - metal * (metalK - blockK);
            double r1 = outlet * (radiatorK - a - airShare * (blockK - a));
            double s1 = surface * (blockK - a - hoodShare * (blockK - a));
            double o1 = oilToCoolant * (oilK - blockK);
            double w1 = oilToAir * (oilK - a);
            double c1 = capacity * (blockK - radiatorK);
            double dm1 = m1 / masses.metalJPerK();
            double db1 = (metal * (metalK - blockK) + o1 - c1 - s1) / masses.blockJPerK();
            double dr1 = (c1 - r1) / masses.radiatorJPerK();
            double do1 = (oilHeat - o1 - w1) / masses.oilJPerK();
            double mm = metalK + h * dm1;
            double bb = blockK + h * db1;
            double rr = radiatorK + h * dr1;
            double oo = oilK + h * do1;
            double m2 = heat - metal * (mm - bb);
            double r2 = outlet * (rr - a - airShare * (bb - a));
            double s2 = surface * (bb - a - hoodShare * (bb - a));
            double o2 = oilToCoolant * (oo - bb);
            double w2 = oilToAir * (oo - a);
            double c2 = capacity * (bb - rr);
            metalK += 0.5 * h * (dm1 + m2 / masses.metalJPerK());
            blockK += 0.5 * h * (db1 + (metal * (mm - bb) + o2 - c2 - s2) / masses.blockJPerK());
            radiatorK += 0.5 * h * (dr1 + (c2 - r2) / masses.radiatorJPerK());
            oilK += 0.5 * h * (do1 + (oilHeat - o2 - w2) / masses.oilJPerK());
            inJ += h * (heat + oilHeat);
            outJ += 0.5 * h * (r1 + r2 + s1 + s2 + w1 + w2);
        }
    }
}
