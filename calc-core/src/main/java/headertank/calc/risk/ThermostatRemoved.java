package headertank.calc.risk;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.choice.BypassState;
import headertank.calc.choice.ThermostatFitting;
import headertank.calc.duty.Demand;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.quantity.FigureKind;
import headertank.calc.quantity.Physics;
import headertank.calc.quantity.SiFigure;
import headertank.calc.result.Balance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The thermostat was taken out. */
public final class ThermostatRemoved implements RiskRule {

    /** A cold day, 5 C [K]; modelling choice. */
    private static final double COLD_DAY_K = Physics.kelvin(5);

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
                new ArrayList<>(car.gainedBy(RuleText.THERMOSTAT_REMOVED_GAIN.with(), fitted));
        double cold = coldDayK(car, car.resolved());
        consequences.add(new Flag.Consequence(
                RuleText.THERMOSTAT_REMOVED_COOLANT_WITHOUT.with(SiFigure.temperature(COLD_DAY_K)),
                "",
                SiFigure.temperature(cold)));
        consequences.add(new Flag.Consequence(
                RuleText.THERMOSTAT_REMOVED_COOLANT_WITH.with(SiFigure.temperature(COLD_DAY_K)),
                "",
                SiFigure.temperature(coldDayK(car, fitted))));
        consequences.add(new Flag.Consequence(
                RuleText.THERMOSTAT_REMOVED_DROP.with(),
                "",
                new SiFigure(thermostatDropPa(car, fitted), FigureKind.PRESSURE_GAUGE)));
        return Optional.of(new Flag(
                id(),
                version(),
                RuleText.THERMOSTAT_REMOVED_TITLE.with(),
                Flag.Weight.CONDITION,
                Flag.Scope.EVERY_DUTY,
                RuleText.THERMOSTAT_REMOVED_REASON.with(),
                consequences,
                RuleText.THERMOSTAT_REMOVED_ADVICE.with(),
                RuleText.THERMOSTAT_REMOVED_TRADE.with(),
                RuleText.THERMOSTAT_REMOVED_CAUTION.with(),
                source()));
    }

    private static double coldDayK(RiskContext car, Resolved state) {
        OperatingPoint easy =
                new OperatingPoint("easy-road", "Easy road at 5 C", 25, 0, 0, new Demand.Road(0, 1500, 0.35), 0);
        Resolved cold = state.with(BuildField.AMBIENT, COLD_DAY_K);
        return car.at(cold, easy).balance() instanceof Balance.Steady s ? s.engineOutK() : Double.NaN;
    }

    private static double thermostatDropPa(RiskContext car, Resolved fitted) {
        var deciding = car.duties().get(0).outcome().deciding().point();
        return car.at(fitted, deciding).balance() instanceof Balance.Steady s
                ? s.coolant().thermostatDropPa()
                : Double.NaN;
    }
}
