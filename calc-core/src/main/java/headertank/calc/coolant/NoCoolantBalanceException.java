package headertank.calc.coolant;

/** The radiator's drop curve admits no balance with the pump, because it jumps. */
public final class NoCoolantBalanceException extends IllegalStateException {

    private static final long serialVersionUID = 1L;

    private final double flowM3PerS;

    NoCoolantBalanceException(double flowM3PerS, double residualPa) {
        super("no coolant balance: the radiator's pressure drop jumps at " + flowM3PerS + " m3/s, residual "
                + residualPa + " Pa");
        this.flowM3PerS = flowM3PerS;
    }

    /** @return radiator flow at which the curve jumps [m3/s] */
    public double flowM3PerS() {
        return flowM3PerS;
    }
}
