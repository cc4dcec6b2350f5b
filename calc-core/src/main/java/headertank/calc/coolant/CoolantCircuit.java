package headertank.calc.coolant;

import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;
import org.hipparchus.util.FastMath;

/**
 * The flows at which the pump's rise equals the drops: pump and block in series with two parallel branches, one of hoses,
 * thermostat and radiator, the other the bypass.
 *
 * <p>F(y) = p0 n^2 - (c + k_b) (Q_r + Q_b)^2 - dp(Q_r), y = Q_r^2, dp = (k_h + k_t) y + dp_rad, Q_b = sqrt(dp / k_bypass);
 * p0, c of the pump [Pa], [Pa s2/m6], n speed share [-], k resistances [Pa s2/m6], Q flows [m3/s]. F falls with y, is
 * positive at 0 and not positive where the radiator would cost nothing: one root, bracketed. In y it is a straight line
 * when the radiator's drop is quadratic, so false position (Anderson and Bjorck 1973, from memory) needs two calls then
 * and about five otherwise; bisection takes over whenever the bracket shrinks too slowly. Derived.
 *
 * <p>Immutable and thread-safe.
 */
public final class CoolantCircuit {

    /** Largest residual of a balance, as a share of the pump's rise without flow [-]. */
    public static final double RELATIVE_RESIDUAL = 1e-10;

    private static final Range SPEED = Range.of(0, 3);
    private static final Range FLOW_FACTOR = Range.of(0.1, 1);
    private static final Range LIFT = Range.of(0, 1);
    private static final Range DROP = Range.of(0, Double.MAX_VALUE);
    private static final int MOST_STEPS = 400;

    private final CircuitSpec spec;
    private final CoolantPump pump;
    private final double unitPaS2PerM6;

    public CoolantCircuit(CircuitSpec spec) {
        this.spec = spec;
        this.pump = CoolantPump.of(spec.pump());
        this.unitPaS2PerM6 = pump.curvePaS2PerM6();
    }

    /** @return {@link #solve(double, double, double, DropCurve)} of a pump that draws nothing but liquid */
    public CoolantFlow solve(double pumpSpeedShare, double lift, DropCurve radiatorDrop) {
        return solve(pumpSpeedShare, lift, 1.0, radiatorDrop);
    }

    /**
     * Balances the circuit.
     *
     * @param pumpSpeedShare pump speed over rated pump speed, 0 to 3, outside: typed error; at 0 nothing flows [-]
     * @param lift thermostat opening of {@link Thermostat#lift}, 0 to 1, below the leak taken as the leak, outside: typed
     *     error; unused without thermostat [-]
     * @param pumpFlowFactor flow of the pump at a given rise over that of its curve, 0.1 to 1, outside: typed error; see
     *     {@link PumpInlet} [-]
     * @param radiatorDrop drop of the radiator against its flow
     * @return flows and drops, residual below {@link #RELATIVE_RESIDUAL} of the pump's rise without flow
     * @throws OutOfRangeException also when the drop curve returns a negative or infinite drop or none
     * @throws NoCoolantBalanceException when the drop curve jumps across the balance
     */
    public CoolantFlow solve(double pumpSpeedShare, double lift, double pumpFlowFactor, DropCurve radiatorDrop) {
        OutOfRangeException.require("pumpFlowFactor", pumpFlowFactor, FLOW_FACTOR);
        OutOfRangeException.require("pumpSpeedShare", pumpSpeedShare, SPEED);
        OutOfRangeException.require("lift", lift, LIFT);
        double shutOff = pump.shutOffPa(pumpSpeedShare);
        if (shutOff < 1e-9) {
            return CoolantFlow.STILL;
        }
        double housing = spec.housingRatio(lift) * unitPaS2PerM6;
        double hose = spec.hoseRatio() * unitPaS2PerM6;
        double branch = housing + hose;
        double block = spec.blockRatio() * unitPaS2PerM6;
        double series = pump.curvePaS2PerM6() / (pumpFlowFactor * pumpFlowFactor) + block;
        double bypassConductance = 1 / (spec.bypassRatio(lift) * unitPaS2PerM6);

        double tolerance = RELATIVE_RESIDUAL * shutOff;
        double widest = 1 + FastMath.sqrt(branch * bypassConductance);
        double low = 0;
        double atLow = shutOff;
        double high = shutOff / (series * widest * widest + branch);
        double atHigh = Double.NaN;
        double y = high;
        double width = high;
        int stale = 0;
        for (int step = 0; step < MOST_STEPS; step++) {
            double q = FastMath.sqrt(y);
            double drop = OutOfRangeException.require("radiatorDropPa", radiatorDrop.dropPa(q), DROP);
            double parallel = branch * y + drop;
            double bypass = FastMath.sqrt(parallel * bypassConductance);
            double total = q + bypass;
            double f = shutOff - series * total * total - parallel;
            if (FastMath.abs(f) <= tolerance || y == high && f > 0) {
                return new CoolantFlow(
                        total,
                        q,
                        bypass,
                        pump.risePa(pumpSpeedShare, total / pumpFlowFactor),
                        drop,
                        housing * y,
                        hose * y,
                        block * total * total,
                        f);
            }
            if (f > 0) {
                atHigh = step > 0 && stale > 0 ? shrunk(atHigh, f, atLow) : atHigh;
                low = y;
                atLow = f;
                stale = 1;
            } else {
                atLow = step > 0 && stale < 0 ? shrunk(atLow, f, atHigh) : atLow;
                high = y;
                atHigh = f;
                stale = -1;
            }
            if (high - low <= 1e-15 * high) {
                throw new NoCoolantBalanceException(q, f);
            }
            y = low + (high - low) * (atLow / (atLow - atHigh));
            if (step % 4 == 3) {
                y = high - low > 0.25 * width ? 0.5 * (low + high) : y;
                width = high - low;
            }
            if (!(y > low && y < high)) {
                y = 0.5 * (low + high);
            }
        }
        throw new NoCoolantBalanceException(FastMath.sqrt(y), atLow);
    }

    /** The far end's value made smaller after two steps on the same side: Anderson and Bjorck's factor, else a half. */
    private static double shrunk(double far, double now, double before) {
        double factor = 1 - now / before;
        return far * (factor > 0 ? factor : 0.5);
    }
}
