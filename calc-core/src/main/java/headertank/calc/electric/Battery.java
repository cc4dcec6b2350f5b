package headertank.calc.electric;

/**
 * The battery as a voltage behind a resistance: when the alternator falls short by I, its terminals stand at V - R I, V the
 * voltage of {@link ElectricBalance}. R of 12 mohm is a guess for a warm starter battery with its leads (modelling choice).
 */
public final class Battery {

    /** R [ohm]; modelling choice. */
    public static final double RESISTANCE_OHM = 0.012;

    private Battery() {}

    /**
     * @param balanceV voltage at which alternator and loads meet [V]
     * @param deficitA what the battery must add, negative taken as nothing [A]
     * @return voltage at its terminals, at least 0 [V]
     */
    public static double terminalV(double balanceV, double deficitA) {
        return Math.max(0, balanceV - RESISTANCE_OHM * Math.max(0, deficitA));
    }
}
