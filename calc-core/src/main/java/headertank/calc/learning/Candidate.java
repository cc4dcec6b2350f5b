package headertank.calc.learning;

import headertank.calc.carspec.Resolved;
import headertank.calc.rating.Plant;
import headertank.calc.uncertainty.ModelSpread;
import headertank.calc.uncertainty.Unknowns;
import java.util.function.UnaryOperator;

/** A car that this one might be, asked what it would have shown. */
final class Candidate {

    private final Unknowns unknowns;
    private final ModelSpread spread;
    private final double[] z;
    private final Resolved values;

    /** @param z a deviate for each unknown */
    Candidate(Unknowns unknowns, ModelSpread spread, double[] z) {
        this.unknowns = unknowns;
        this.spread = spread;
        this.z = z;
        this.values = unknowns.values(z);
    }

    /** @return this car with what is different about it on the day of the evidence */
    Plant plant(UnaryOperator<Resolved> change) {
        return unknowns.plant(change.apply(values), z, spread);
    }
}
