package headertank.calc.air;

import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;
import java.util.function.DoubleUnaryOperator;

/**
 * The pressure balance of {@link AirPath} for one core and its fans, for a caller that solves it again and again while the
 * temperatures settle: it keeps the last flow and begins there, and allocates nothing but the results that are asked for.
 *
 * <p>Not thread-safe; each solver makes its own by {@link AirPath#balance}.
 */
public final class AirBalance {

    private static final double RELATIVE_WIDTH = 1e-11;
    private static final double FLOW_MAX_M3_PER_S = 1e4;
    private static final double FIRST_STEP = 1e-3;
    private static final double PRESSURE_MAX_PA = 1e6;
    private static final Range SPEED_FACTOR = Range.of(0, 3);

    private final AirPath path;
    private final CoreDropCurve core;
    private final Fan fan;
    private final double shroudedM2;
    private final double bareM2;
    private final boolean flaps;
    private final DoubleUnaryOperator excess = this::excess;

    private AirConditions at;
    private double ram;
    private double recirculating;
    private double fanSpeed;
    private double cold;
    private double hot;
    private double heating;
    private double loss;
    private double q1;
    private double q2;
    private double across;
    private double forward;
    private double back;
    private double share;

    AirBalance(AirPath path, CoreDropCurve core, Fan fan) {
        this.path = path;
        this.core = core;
        this.fan = fan;
        double covered = fan == null ? 1 : path.spec().coveredShare();
        double face = path.spec().faceAreaM2();
        this.shroudedM2 = covered * face;
        this.bareM2 = (1 - covered) * face;
        this.flaps = path.spec().flaps();
    }

    /** Takes the car's speed, sideslip and the air around it from here; its core temperatures are not used. */
    public void around(AirConditions conditions) {
        at = conditions;
        ram = path.ram(conditions);
        recirculating = Recirculation.shareWithoutBackflow(path.spec().recirculationAtRest(), at.speedMPerS());
    }

    /**
     * Solves the balance; read it with the accessors until the next time.
     *
     * @param airInK air entering the core [K]
     * @param airOutK air leaving it [K]
     * @param fanSpeedFactor fan speed over reference speed [-], 0 to 3; see {@link Fan#speedFactor}
     */
    public void solve(double airInK, double airOutK, double fanSpeedFactor) {
        fanSpeed = OutOfRangeException.require("fanSpeedFactor", fanSpeedFactor, SPEED_FACTOR);
        cold = at.densityKgPerM3(airInK);
        hot = at.densityKgPerM3(airOutK);
        heating = (1 + cold / hot) / 2;
        loss = path.lossTerm(cold, hot);
        q1 = root();
        across = across(q1);
        q2 = bare(across);
        forward = cold * (Math.max(0, q1) + Math.max(0, q2));
        back = -cold * (Math.min(0, q1) + Math.min(0, q2));
        share = Recirculation.share(recirculating, forward, back);
    }

    /** @return air that passes the core forwards [kg/s] */
    public double massKgPerS() {
        return forward;
    }

    /** @return share of core-outlet air in the air that enters [-] */
    public double recirculationShare() {
        return share;
    }

    /** @return the whole solved balance */
    public AirFlow flow() {
        return new AirFlow(
                forward,
                back,
                q1,
                q2,
                across,
                forward / cold / path.spec().faceAreaM2(),
                share,
                drive(q1 + q2) - across,
                fan == null ? 0 : q1 * cold / fan.density(cold, hot) / fan.count(),
                fanRise(q1));
    }

    /**
     * The curves whose crossing is the balance, at the temperatures and the fan speed of the last {@link #solve}.
     *
     * @param shroudedM3PerS flow through the face under the shroud [m3/s]
     * @return both sides of the balance at this flow; where air passes beside the shroud too, it takes its part of the ram
     */
    public AirCurvePoint curveAt(double shroudedM3PerS) {
        double fanPa = fanRise(shroudedM3PerS);
        return new AirCurvePoint(
                shroudedM3PerS,
                heating * core.dropPa(shroudedM3PerS / shroudedM2),
                fanPa,
                fanPa + rammed(shroudedM3PerS));
    }

    /** Pressure between the car's front and the space behind the core while this much passes under the shroud [Pa]. */
    private double rammed(double shrouded) {
        if (bareM2 == 0) {
            return drive(shrouded);
        }
        return BracketedRoot.falling(
                d -> drive(shrouded + bare(d)) - d, -PRESSURE_MAX_PA, PRESSURE_MAX_PA, RELATIVE_WIDTH);
    }

    private double root() {
        double near = q1;
        double atNear = excess(near);
        if (atNear == 0) {
            return near;
        }
        double sign = Math.signum(atNear);
        double step = near == 0 ? shroudedM2 : FIRST_STEP * Math.abs(near);
        double far = near + sign * step;
        double atFar = excess(far);
        while (atFar * sign > 0 && Math.abs(far) < FLOW_MAX_M3_PER_S) {
            near = far;
            atNear = atFar;
            step *= 4;
            far = near + sign * step;
            atFar = excess(far);
        }
        return sign > 0
                ? BracketedRoot.falling(excess, near, atNear, far, atFar, RELATIVE_WIDTH)
                : BracketedRoot.falling(excess, far, atFar, near, atNear, RELATIVE_WIDTH);
    }

    /** Falls with the shrouded flow and is 0 at the balance. */
    private double excess(double shrouded) {
        double d = across(shrouded);
        return drive(shrouded + bare(d)) - d;
    }

    private double across(double shrouded) {
        return heating * core.dropPa(shrouded / shroudedM2) - fanRise(shrouded);
    }

    private double fanRise(double shrouded) {
        return fan == null ? 0 : fan.riseAtMassPa(shrouded * cold, cold, hot, fanSpeed);
    }

    private double bare(double d) {
        return bareM2 == 0 || d < 0 && flaps ? 0 : bareM2 * core.velocityMPerS(d / heating);
    }

    private double drive(double q) {
        return ram - loss * q * Math.abs(q);
    }
}
