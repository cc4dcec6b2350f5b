package headertank.calc.cause;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;

/**
 * A car with what a cause does to it.
 *
 * @param car its values
 * @param heat factor on the heat that its engine gives to coolant and oil [-]
 * @param airInK how much hotter the air around the front of the car is than the day [K]
 * @param gaugeK how much more its gauge shows than its sensor feels [K]
 * @param boilingK by how much its coolant boils later than its pressure says; negative: earlier [K]
 */
public record Fault(Resolved car, double heat, double airInK, double gaugeK, double boilingK) {

    /** @return a car that nothing is wrong with */
    public static Fault none(Resolved car) {
        return new Fault(car, 1, 0, 0, 0);
    }

    /** @return the same with a number times a factor, within what the field allows; a number that is not known stays so */
    public Fault scaled(BuildField field, double factor) {
        return set(field, factor * car.value(field));
    }

    /** @return the same with a number moved, likewise [SI] */
    public Fault moved(BuildField field, double by) {
        return set(field, car.value(field) + by);
    }

    /** @return the same with another number, within what the field allows; a number that is not known stays so [SI] */
    public Fault set(BuildField field, double value) {
        return car.has(field) ? of(car.with(field, field.allowed().clamp(value))) : this;
    }

    /** @return the same with another option */
    public Fault chosen(BuildField field, Enum<?> option) {
        return of(car.with(field, option));
    }

    /** @return the same with more heat by a factor [-] */
    public Fault heated(double factor) {
        return new Fault(car, heat * factor, airInK, gaugeK, boilingK);
    }

    /** @return the same in air that is hotter [K] */
    public Fault inAir(double hotterK) {
        return new Fault(car, heat, airInK + hotterK, gaugeK, boilingK);
    }

    /** @return the same with a gauge that shows more [K] */
    public Fault showing(double moreK) {
        return new Fault(car, heat, airInK, gaugeK + moreK, boilingK);
    }

    /** @return the same with coolant that boils later, or earlier below 0 [K] */
    public Fault boiling(double laterK) {
        return new Fault(car, heat, airInK, gaugeK, boilingK + laterK);
    }

    private Fault of(Resolved changed) {
        return new Fault(changed, heat, airInK, gaugeK, boilingK);
    }
}
