package headertank.calc.coolant;

/** Pressure drop of the radiator's coolant side against flow. */
@FunctionalInterface
public interface DropCurve {

    /**
     * Must be continuous, rise with flow, be 0 at no flow and finite; it is called a handful of times per solve.
     *
     * @param flowM3PerS coolant flow through the radiator, at least 0 [m3/s]
     * @return pressure drop, at least 0 [Pa]
     */
    double dropPa(double flowM3PerS);
}
