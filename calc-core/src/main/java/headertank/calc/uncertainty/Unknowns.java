package headertank.calc.uncertainty;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.FieldGroup;
import headertank.calc.carspec.ModelFactor;
import headertank.calc.carspec.Resolved;
import headertank.calc.quantity.FigureKind;
import headertank.calc.rating.Plant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What is not known of a car, in one order: every value with a spread, then every {@link ModelFactor}. A car that it might be is a
 * standard normal deviate for each.
 */
public final class Unknowns {

    /** What a place in the order stands for. */
    private static final ModelFactor[] FACTORS = ModelFactor.values();

    private final Resolved car;
    private final List<BuildField> fields = new ArrayList<>();

    /** @param car the car with what was learned of it */
    public Unknowns(Resolved car) {
        this.car = car;
        for (BuildField f : BuildField.values()) {
            if (car.has(f) && car.spread(f).sigma() > 0 && f.kind() != FigureKind.COUNT) {
                fields.add(f);
            }
        }
    }

    /** @return how many there are */
    public int size() {
        return fields.size() + FACTORS.length;
    }

    /** @return the values with a spread, which come first */
    public List<BuildField> fields() {
        return List.copyOf(fields);
    }

    /** @return stable key of an unknown: that of its {@link BuildField} or {@link ModelFactor} */
    public String key(int place) {
        return isField(place) ? fields.get(place).key() : factor(place).key();
    }

    /** @return part that an unknown belongs to */
    public FieldGroup part(int place) {
        return isField(place) ? fields.get(place).group() : factor(place).part();
    }

    /** @return whether an unknown is a value of the car and not a model factor */
    public boolean isField(int place) {
        return place < fields.size();
    }

    /** @return the model factor at a place after the values */
    public ModelFactor factor(int place) {
        return FACTORS[place - fields.size()];
    }

    /** @return place of the unknown of this key, below 0 when it is known */
    public int place(String key) {
        for (int i = 0; i < size(); i++) {
            if (key(i).equals(key)) {
                return i;
            }
        }
        return -1;
    }

    /**
     * @param independent a standard normal deviate for each unknown, independent of one another
     * @return those of a car of which something was learned, which hang together
     */
    public double[] mixed(double[] independent) {
        double[] z = independent.clone();
        Correlated.of(car, this).ifPresent(l -> l.apply(z));
        return z;
    }

    /** @return the values of the car at these deviates */
    public Resolved values(double[] z) {
        double[] moved = car.values();
        for (int i = 0; i < fields.size(); i++) {
            BuildField f = fields.get(i);
            moved[f.ordinal()] = f.allowed().clamp(car.spread(f).moved(moved[f.ordinal()], z[i]));
        }
        return car.withValues(moved);
    }

    /**
     * @param values the car, at its values or changed
     * @param z a deviate for each unknown
     * @param spread how far its models may be off
     * @return the car with its models at these deviates
     */
    public Plant plant(Resolved values, double[] z, ModelSpread spread) {
        return Plant.of(
                values,
                spread.at(
                        Arrays.copyOfRange(z, fields.size(), size()),
                        car.learned().deviations()));
    }
}
