package headertank.calc.risk;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.fluid.Fuel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The cooling set-up was taken over from a car on another fuel. */
public final class SetupFromAlcoholCar implements RiskRule {

    @Override
    public String id() {
        return "setup-from-alcohol-car";
    }

    @Override
    public String version() {
        return "1";
    }

    @Override
    public String source() {
        return "latent heats: US DOE Alternative Fuels Data Center; influence on wall heat derived, weakly sourced";
    }

    @Override
    public Optional<Flag> examine(RiskContext car) {
        if (car.resolved().token(BuildField.FUEL_OF_DONOR).isEmpty()) {
            return Optional.empty();
        }
        Fuel donor = car.resolved().option(BuildField.FUEL_OF_DONOR, Fuel.class);
        Fuel burnt = car.resolved().option(BuildField.FUEL, Fuel.class);
        if (donor.isDiesel() || burnt.isDiesel() || !(donor.coolantFactor() < burnt.coolantFactor() - 0.005)) {
            return Optional.empty();
        }
        Resolved asDonor = car.resolved().with(BuildField.FUEL, donor);
        List<Flag.Consequence> consequences = new ArrayList<>(
                car.gainedBy("margin that the same car would have on the donor's fuel, more than now", asDonor));
        consequences.add(new Flag.Consequence(
                "wall heat on the donor's fuel over wall heat on this one",
                "",
                donor.coolantFactor() / burnt.coolantFactor(),
                "-"));
        return Optional.of(new Flag(
                id(),
                version(),
                "Set-up taken over from a car on another fuel",
                Flag.Weight.ofGains(consequences.subList(0, consequences.size() - 1)),
                Flag.Scope.IN_THE_MARGINS,
                "An alcohol takes three to six times the heat per megajoule to evaporate, burns a little cooler and runs"
                        + " richer, so at equal power less heat reaches the coolant. A radiator that was enough there has less"
                        + " in hand here. The influence of the fuel is weakly sourced: its uncertainty is part of the rating.",
                consequences,
                "Rate and size the cooling for the fuel that this car burns.",
                "",
                "",
                source()));
    }
}
