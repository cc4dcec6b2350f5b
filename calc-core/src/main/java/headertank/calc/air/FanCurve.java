package headertank.calc.air;

/**
 * Pressure rise of one fan against its flow.
 *
 * <p>Up to free delivery {@code p/p0 = 1 - s u - (1 - s) u^2}, u = q/q0. Fan laws: q0 goes with speed N, p0 with rho N^2.
 * Beyond free delivery {@code p = -k rho/2 (q^2 - q0^2)/A^2} with {@code k = max(1.5, (1 - s/2) p0/(rho/2 (q0/A)^2))},
 * which joins smoothly, but never below the drop without power {@code -k_off rho/2 (q/A)^2}; where k lies below k_off, {@code
 * -(k_off - k) rho/2 ((q - 2 q0)/A)^2} is added from twice the free flow on, so that a fan that hardly turns resists as one
 * without power. Against reverse flow {@code p0
 * + k_off rho/2 (q/A)^2}. Speed 0 leaves the drop without power in both directions. Pressure falls strictly with flow.
 * Derived; the coefficients are modelling choices (see {@link FanSpec}).
 */
final class FanCurve {

    /** Air density at which fans are stated [kg/m3]. */
    static final double STATED_DENSITY = 1.2;

    /** Flow over free flow from which a slow fan begins to resist like one without power [-]; modelling choice. */
    private static final double KNEE = 2;

    private static final double PUSHER_SPEED = 0.75;

    private final FanSpec spec;
    private final double offLoss;
    private final double inverseAreaSquared;
    private final double overrunLoss;
    private final double slowLoss;
    private final double speedFactor;

    FanCurve(FanSpec spec) {
        this.spec = spec;
        this.offLoss = spec.windmillingLoss();
        this.inverseAreaSquared = 1 / (spec.annulusM2() * spec.annulusM2());
        this.overrunLoss = Math.max(
                1.5,
                (1 - spec.shape() / 2)
                        * spec.shutOffPa()
                        / (0.5 * STATED_DENSITY * spec.freeFlowM3PerS() * spec.freeFlowM3PerS() * inverseAreaSquared));
        this.slowLoss = Math.max(0, offLoss - overrunLoss);
        this.speedFactor = spec.pushing() ? PUSHER_SPEED : 1;
    }

    /** @return rise [Pa] at flow q of one fan [m3/s] in air of density rho, at a share of the reference speed */
    double risePa(double q, double rho, double speedShare) {
        double n = speedShare * speedFactor;
        double dynamic = 0.5 * rho * inverseAreaSquared;
        double off = -offLoss * dynamic * q * Math.abs(q);
        if (n <= 0) {
            return off;
        }
        double p0 = spec.shutOffPa() * n * n * rho / STATED_DENSITY;
        double q0 = spec.freeFlowM3PerS() * n;
        if (q <= 0) {
            return p0 + off;
        }
        if (q <= q0) {
            double u = q / q0;
            return p0 * (1 - u * (spec.shape() + (1 - spec.shape()) * u));
        }
        double over = Math.max(0, q - KNEE * q0);
        return Math.max(off, -dynamic * (overrunLoss * (q * q - q0 * q0) + slowLoss * over * over));
    }
}
