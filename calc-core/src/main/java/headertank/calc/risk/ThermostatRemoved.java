package headertank.calc.risk;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.choice.BypassState;
import headertank.calc.choice.ThermostatFitting;
import headertank.calc.duty.Demand;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.quantity.Physics;
import headertank.calc.result.Balance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The thermostat was taken out. */
public final class ThermostatRemoved implements RiskRule {

    @Override
    public String id() {
        return "thermostat-removed";
    }

    @Override
    public String version() {
        return "1";
    }

    @Override
    public String source() {
        return "solved balance with and without; trade statement: common practice, no source";
    }

    @Override
    public Optional<Flag> examine(RiskContext car) {
        if (!car.resolved().is(BuildField.THERMOSTAT, ThermostatFitting.REMOVED)) {
            return Optional.empty();
        }
        Resolved fitted = car.resolved()
                .with(BuildField.THERMOSTAT, ThermostatFitting.FITTED)
                .with(BuildField.THERMOSTAT_BYPASS, BypassState.CLOSES_WITH_LIFT);
        List<Flag.Consequence> consequences =
                new ArrayList<>(car.gainedBy("margin gained by fitting a thermostat again", fitted));
        double cold = coldDayK(car, car.resolved());
        consequences.add(new Flag.Consequence("coolant on an easy road at 5 C without it", "", cold, "K absolute"));
        consequences.add(new Flag.Consequence(
                "coolant on an easy road at 5 C with it", "", coldDayK(car, fitted), "K absolute"));
        consequences.add(new Flag.Consequence(
                "drop across it that keeps pressure in the block", "", thermostatDropPa(car, fitted), "Pa"));
        return Optional.of(new Flag(
                id(),
                version(),
                "Thermostat removed",
                Flag.Weight.CONDITION,
                Flag.Scope.EVERY_DUTY,
                "Without it the engine runs far too cold at light load, an open bypass takes flow from the radiator,"
                        + " and the pressure that the thermostat's drop keeps in the block is gone, so that boiling in the"
                        + " head starts sooner. More flow by itself does not heat the engine: heat given off never falls"
                        + " with coolant flow.",
                consequences,
                "Fit a thermostat that opens at the temperature the engine should run at. If it must stay out, close"
                        + " the bypass and fit a restrictor plate.",
                "Many say that without it the coolant passes the radiator too fast to cool.",
                "Let the engine cool before opening the system: coolant under pressure scalds.",
                source()));
    }

    private static double coldDayK(RiskContext car, Resolved state) {
        OperatingPoint easy =
                new OperatingPoint("easy-road", "Easy road at 5 C", 25, 0, 0, new Demand.Road(0, 1500, 0.35), 0);
        Resolved cold = state.with(BuildField.AMBIENT, Physics.kelvin(5));
        return car.at(cold, easy).balance() instanceof Balance.Steady s ? s.engineOutK() : Double.NaN;
    }

    private static double thermostatDropPa(RiskContext car, Resolved fitted) {
        var deciding = car.duties().get(0).outcome().deciding().point();
        return car.at(fitted, deciding).balance() instanceof Balance.Steady s
                ? s.coolant().thermostatDropPa()
                : Double.NaN;
    }
}
