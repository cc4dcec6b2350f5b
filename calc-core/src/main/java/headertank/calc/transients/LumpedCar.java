package headertank.calc.transients;

import headertank.calc.choice.SensorPlacement;
import headertank.calc.coolant.Thermostat;
import headertank.calc.rating.Plant;
import headertank.calc.result.RunResult;
import headertank.calc.sensor.SensorMount;
import headertank.calc.sensor.SensorReading;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.util.FastMath;

/**
 * The lumped car as a system of ordinary differential equations; T in K, C in J/K, UA in W/K.
 *
 * <pre>
 * C_m T_m' = Q - UA_m (T_m - T_b)
 * C_b T_b' = Q_s + UA_m (T_m - T_b) + UA_oc (T_o - T_b) - C (T_b - T_r) - UA_s (T_b - T_h)
 * C_r T_r' = C (T_b - T_r) - G_c (T_r - T_k)
 * C_k T_k' = G_c (T_r - T_k) - G_a (T_k - T_ai) - G_s (T_k - T_a)
 * C_o T_o' = Q_o - UA_oc (T_o - T_b) - UA_oa (T_o - T_a)
 * C_h T_h' = p UA_s (T_b - T_h) + C_a (T_mix - T_h) - (UA_p + p UA_g) (T_h - T_a)
 * </pre>
 *
 * <p>m engine metal, b coolant in block and head, r coolant in hoses and radiator (as it leaves), k core metal, o oil, h air
 * under the hood, a ambient, ai air into the core. Q_s what hot
 * ports and exhaust give to the head's coolant once the engine stands. C heat capacity rate of the coolant, G = C e/(1 - e) with the
 * effectiveness e of the steady balances at the present lift, duty and T_b, so that the car at rest is that of the steady
 * solver; 1/G_c + 1/G_a = 1/G, split as the radiator's resistances are; G_s what
 * a core loses where no air is driven through it; of a G that is large beside C_k a part passes the metal by, which changes nothing at rest. C_a that of the air, T_mix the mean of the air before
 * and behind the core, UA_p the hood's panel, p = UA_s/(UA_s + C_a) the share of the block's surface heat that stays under
 * the hood (modelling choice), UA_g = 10 W/K what its gaps let out when nothing blows through (guessed).
 *
 * <p>Thermostat: wax T_s' = (T_b - T_s)/8 s; it stands where T_s - z says, with friction z' = T_s' - |T_s'| z/1 K - z/60 s
 * (the form of Bouc and Wen, from memory), so that it opens 1 K later and shuts 1 K later than its curve and vibration frees
 * it within a minute; times and width are modelling choices, no source (one maker's manual has 80 to 84 deg C to open and 75 to be
 * shut again, so the real loop may be wider). Sensors: {@link SensorReading}, one wetted sensor at each
 * place. Further states count energy in and out and charge; they keep the sums exact.
 */
final class LumpedCar implements OrdinaryDifferentialEquation {

    static final int METAL = 0;
    static final int BLOCK = 1;
    static final int RADIATOR = 2;
    static final int CORE = 3;
    static final int OIL = 4;
    static final int HOOD = 5;
    static final int WAX = 6;
    static final int FRICTION = 7;
    static final int SENSOR = 8;
    static final int IN_J = 12;
    static final int OUT_J = 13;
    static final int FAN_AS = 14;
    static final int BATTERY_AS = 15;
    static final int STATES = 16;

    private static final double WAX_LAG_S = 8;
    private static final double HALF_HYSTERESIS_K = 1;
    private static final double FRICTION_S = 60;
    private static final double GAPS_W_PER_K = 10;

    /** Without coolant flow the core gives off a quarter of what the air through it could carry (guessed). */
    private static final double STANDING_AIR_SHARE = 0.25;
    /** From coolant that stands in the tubes to their metal (guessed). */
    private static final double STILL_COOLANT_W_PER_K = 50;

    private static final double LEAST_W_PER_K = 1e-3;
    private static final double STANDING_AIR_SIDE = 0.9;

    /** Rates beyond this are slowed down: nothing that is looked at changes so fast, and steps stay long [1/s]. */
    private static final double FASTEST_PER_S = 4;

    private static final SensorPlacement[] PLACES = SensorPlacement.values();

    private final Plant plant;
    private final Masses masses;
    private final Fans fans;
    private final int fanSensor;
    private Place place;
    private double offSinceS;
    private final int firstSensor;
    private final int lastSensor;
    private final double fastestPerS;
    private int evaluations;

    /** @param allSensors whether every place's sensor is followed, or only that of the fans, the others standing still */
    LumpedCar(Plant plant, Masses masses, Fans fans, boolean allSensors) {
        this(plant, masses, fans, allSensors, FASTEST_PER_S);
    }

    /** @param fastestPerS rates beyond this are slowed down [1/s] */
    LumpedCar(Plant plant, Masses masses, Fans fans, boolean allSensors, double fastestPerS) {
        this.fastestPerS = fastestPerS;
        this.firstSensor = allSensors ? 0 : plant.fanSensor().ordinal();
        this.lastSensor = allSensors ? PLACES.length - 1 : firstSensor;
        this.plant = plant;
        this.masses = masses;
        this.fans = fans;
        this.fanSensor = SENSOR + plant.fanSensor().ordinal();
    }

    void enter(Place next, double timeS) {
        if (place == null || place.engineOn) {
            offSinceS = timeS;
        }
        place = next;
    }

    static RunResult.Charge charge(double[] state) {
        return new RunResult.Charge(state[FAN_AS] / 3600, state[BATTERY_AS] / 3600);
    }

    static RunResult.Energy energy(double[] state, double storedJ) {
        double inJ = state[IN_J];
        return new RunResult.Energy(storedJ, (inJ - state[OUT_J] - storedJ) / Math.max(inJ, 1));
    }

    /** @return when the engine was last stopped [s] */
    double offSinceS() {
        return offSinceS;
    }

    Place place() {
        return place;
    }

    int fanSensor() {
        return fanSensor;
    }

    int evaluations() {
        return evaluations;
    }

    /** @return thermostat lift in this state [-] */
    double lift(double[] y) {
        return Thermostat.lift(plant.thermostat(), y[WAX] - y[FRICTION]);
    }

    /** The car settles in this state: has its cooling solved exactly there. */
    void settleAt(double t, double[] y) {
        place.cooling().settleAt(y[BLOCK], lift(y), duty(t, y));
    }

    double duty(double t, double[] y) {
        return fans.duty(t, y[fanSensor]);
    }

    @Override
    public int getDimension() {
        return STATES;
    }

    @Override
    public double[] computeDerivatives(double t, double[] y) {
        double[] d = new double[STATES];
        derivatives(t, y, d);
        return d;
    }

    /** Fills in the derivatives. */
    void derivatives(double t, double[] y, double[] d) {
        evaluations++;
        Place p = place;
        Cooling table = p.cooling();
        double block = y[BLOCK];
        double duty = duty(t, y);
        table.at(block, lift(y), duty);
        double c = table.capacityRateWPerK();
        double air = table.airCapacityWPerK();
        double share = c > 1e-3 ? table.airSideShare() : STANDING_AIR_SIDE;
        double g = c > 1e-3 ? running(c) : Math.max(LEAST_W_PER_K, STANDING_AIR_SHARE * air);
        double byMetal = Math.min(g, 0.25 * fastestPerS * masses.coreJPerK());
        double intoCore = Math.max(STILL_COOLANT_W_PER_K, intoCoreWPerK(byMetal, share));
        double outOfCore = byMetal * intoCore / (intoCore - byMetal);
        double in = p.coolantW(block, y[OIL]);
        double inOil = p.oilW(block, y[OIL]);
        double soak = p.soakW(t - offSinceS);
        double surfaceWPerK = p.surfaceWPerK;
        double stays = surfaceWPerK / (surfaceWPerK + air);

        double fromMetal = table.metalConductanceWPerK() * (y[METAL] - block);
        double fromOil = p.oilToCoolantWPerK * (y[OIL] - block);
        double carried = c * (block - y[RADIATOR]);
        double surface = surfaceWPerK * (block - y[HOOD]);
        double core = intoCore * (y[RADIATOR] - y[CORE]);
        double past = (g - byMetal) * (y[RADIATOR] - table.airInK());
        double given = outOfCore * (y[CORE] - table.airInK());
        double still = plant.standingCoreWPerK(air) * (y[CORE] - p.ambientK);
        double oilAir = p.oilToAirW(y[OIL], air);
        double mixed = air * (table.underHoodK() - y[HOOD]);
        double through = (p.hood.conductanceWPerK(y[HOOD]) + stays * GAPS_W_PER_K) * (y[HOOD] - p.ambientK);

        d[METAL] = (in - fromMetal) / masses.metalJPerK();
        d[BLOCK] = (fromMetal + fromOil + soak - carried - surface) / masses.blockJPerK();
        d[RADIATOR] = (carried - core - past) / masses.radiatorJPerK();
        d[CORE] = (core - given - still) / masses.coreJPerK();
        d[OIL] = (inOil - fromOil - oilAir) / masses.oilJPerK();
        d[HOOD] = (stays * surface + mixed - through) / masses.hoodJPerK();
        d[WAX] = (block - y[WAX]) / WAX_LAG_S;
        d[FRICTION] = d[WAX] - Math.abs(d[WAX]) * y[FRICTION] / HALF_HYSTERESIS_K - y[FRICTION] / FRICTION_S;
        double flow = table.radiatorM3PerS();
        for (int i = firstSensor; i <= lastSensor; i++) {
            double shown = SensorReading.steadyK(PLACES[i], block, y[RADIATOR], p.ambientK, flow);
            d[SENSOR + i] = (shown - y[SENSOR + i]) / SensorReading.lagS(PLACES[i], SensorMount.WETTED, flow);
        }
        d[IN_J] = in + soak + inOil;
        d[OUT_J] = given + past + still + oilAir + (1 - stays) * surface + through - mixed;
        double fanA = p.fanCurrentA(duty, fans.inrush(t));
        d[FAN_AS] = fanA;
        d[BATTERY_AS] = Math.max(0, p.baseLoadA + fanA - p.supplyA);
    }

    /** @return about how fast the fastest of this state changes: coolant against metal and radiator, or the thermostat's friction [1/s] */
    double fastestPerS(double t, double[] y) {
        Cooling table = place.cooling();
        table.at(y[BLOCK], lift(y), duty(t, y));
        double waxKPerS = Math.abs(y[BLOCK] - y[WAX]) / WAX_LAG_S;
        double coolant = table.capacityRateWPerK() * (1 / masses.blockJPerK() + 1 / masses.radiatorJPerK())
                + table.metalConductanceWPerK() * (1 / masses.blockJPerK() + 1 / masses.metalJPerK());
        return Math.max(coolant, waxKPerS / HALF_HYSTERESIS_K);
    }

    /** @return G, slowed down where it is far above the flow that feeds it [W/K] */
    private double running(double c) {
        double g = c * (FastMath.exp(Math.min(20, place.cooling().conductanceWPerK() / c)) - 1);
        return Math.max(1e-3, Math.min(g, Math.max(fastestPerS * masses.radiatorJPerK() - c, 4 * c)));
    }

    private double intoCoreWPerK(double g, double airSideShare) {
        double split = g / Math.max(0.02, 1 - airSideShare);
        return Math.max(1.5 * g, Math.min(split, fastestPerS * masses.coreJPerK()));
    }
}
