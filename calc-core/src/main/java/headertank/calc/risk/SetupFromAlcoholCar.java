package headertank.calc.risk;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.fluid.Fuel;
import headertank.calc.quantity.FigureKind;
import headertank.calc.quantity.Message;
import headertank.calc.quantity.SiFigure;
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
        List<Flag.Consequence> consequences =
                new ArrayList<>(car.gainedBy(RuleText.SETUP_FROM_ALCOHOL_CAR_GAIN.with(), asDonor));
        consequences.add(new Flag.Consequence(
                RuleText.SETUP_FROM_ALCOHOL_CAR_WALL_HEAT_RATIO.with(),
                "",
                new SiFigure(donor.coolantFactor() / burnt.coolantFactor(), FigureKind.RATIO)));
        return Optional.of(new Flag(
                id(),
                version(),
                RuleText.SETUP_FROM_ALCOHOL_CAR_TITLE.with(),
                Flag.Weight.ofGains(consequences.subList(0, consequences.size() - 1)),
                Flag.Scope.IN_THE_MARGINS,
                RuleText.SETUP_FROM_ALCOHOL_CAR_REASON.with(),
                consequences,
                RuleText.SETUP_FROM_ALCOHOL_CAR_ADVICE.with(),
                Message.NONE,
                Message.NONE,
                source()));
    }
}
