package headertank.calc.quantity;

/** How the coolant flows in the tubes, and how well the heat transfer there is known. */
public enum TubeRegime {
    /** Smooth layers. */
    LAMINAR(0.15),
    /** Between the two; where exactly it changes is not known well. */
    TRANSITION(0.25),
    /** Well mixed. */
    TURBULENT(0.08);

    private final double coefficientSpread;

    TubeRegime(double coefficientSpread) {
        this.coefficientSpread = coefficientSpread;
    }

    /** @return one standard deviation of the tube-side coefficient, as a share of it; modelling choice [-] */
    public double coefficientSpread() {
        return coefficientSpread;
    }
}
