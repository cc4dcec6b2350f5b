package headertank.app.drawing;

import static headertank.calc.carspec.BuildField.AIR_DUCT;
import static headertank.calc.carspec.BuildField.AIR_EXIT;
import static headertank.calc.carspec.BuildField.AIR_INLET;
import static headertank.calc.carspec.BuildField.CAP_PRESSURE;
import static headertank.calc.carspec.BuildField.CHARGE_COOLER;
import static headertank.calc.carspec.BuildField.CONDENSER;
import static headertank.calc.carspec.BuildField.CORE_DEPTH;
import static headertank.calc.carspec.BuildField.CORE_HEIGHT;
import static headertank.calc.carspec.BuildField.CORE_PASSES;
import static headertank.calc.carspec.BuildField.CORE_TANKS;
import static headertank.calc.carspec.BuildField.CORE_WIDTH;
import static headertank.calc.carspec.BuildField.FAN_COUNT;
import static headertank.calc.carspec.BuildField.FAN_COVER;
import static headertank.calc.carspec.BuildField.FAN_DIAMETER;
import static headertank.calc.carspec.BuildField.FAN_DRIVE;
import static headertank.calc.carspec.BuildField.FAN_FLAPS;
import static headertank.calc.carspec.BuildField.FAN_MOUNTING;
import static headertank.calc.carspec.BuildField.FAN_SENSOR;
import static headertank.calc.carspec.BuildField.GAUGE_SENSOR;
import static headertank.calc.carspec.BuildField.HOSE_DIAMETER;
import static headertank.calc.carspec.BuildField.OIL_COOLER;
import static headertank.calc.carspec.BuildField.PUMP_DRIVE;
import static headertank.calc.carspec.BuildField.THERMOSTAT;
import static headertank.calc.carspec.BuildField.THERMOSTAT_BYPASS;

import headertank.app.unit.Dimension;
import headertank.calc.carspec.BuildField;
import headertank.calc.choice.FanDrive;
import headertank.calc.choice.ThermostatFitting;
import headertank.calc.choice.YesNo;
import java.util.ArrayList;
import java.util.List;

/** The layout drawing in whole sentences, for whoever does not see it. */
final class Sentences {

    private final CarParts car;
    private final StateFigures state;
    private final Words words;
    private final List<String> said = new ArrayList<>();

    private Sentences(CarParts car, StateFigures state, Words words) {
        this.car = car;
        this.state = state;
        this.words = words;
    }

    static List<String> of(CarParts car, StateFigures state, Words words) {
        return new Sentences(car, state, words).all();
    }

    private List<String> all() {
        say("air", number(AIR_INLET, Dimension.AREA), option("duct", AIR_DUCT), option("exit", AIR_EXIT));
        inFront();
        say(
                "radiator",
                number(CORE_WIDTH, Dimension.LENGTH),
                number(CORE_HEIGHT, Dimension.LENGTH),
                number(CORE_DEPTH, Dimension.LENGTH),
                car.marked(words, words.say("passes", car.count(CORE_PASSES)), CORE_PASSES),
                option("tanks", CORE_TANKS));
        fans();
        String thermostat = car.is(THERMOSTAT, ThermostatFitting.FITTED) ? "thermostat-fitted" : "thermostat-removed";
        say(thermostat, option("bypass", THERMOSTAT_BYPASS), show(state.lift(), Dimension.FRACTION));
        say("pump", option("pump", PUMP_DRIVE), number(HOSE_DIAMETER, Dimension.LENGTH));
        say("cap", number(CAP_PRESSURE, Dimension.PRESSURE_GAUGE));
        if (car.oilCoolerInCoolant()) {
            say("oil-cooler");
        }
        said.add(car.marked(
                        words,
                        words.say("gauge." + car.token(GAUGE_SENSOR), show(state.gaugeK(), Dimension.TEMPERATURE)),
                        GAUGE_SENSOR)
                + ".");
        if (car.is(FAN_DRIVE, FanDrive.ELECTRIC)) {
            said.add(car.marked(words, words.say("fan-sensor." + car.token(FAN_SENSOR)), FAN_SENSOR) + ".");
        }
        flows();
        return List.copyOf(said);
    }

    private void inFront() {
        List<String> parts = new ArrayList<>();
        if (car.oilCoolerInAir()) {
            parts.add(car.marked(words, words.say("part.oil-cooler"), OIL_COOLER));
        }
        if (car.is(CONDENSER, YesNo.YES)) {
            parts.add(car.marked(words, words.say("part.condenser"), CONDENSER));
        }
        if (car.is(CHARGE_COOLER, YesNo.YES)) {
            parts.add(car.marked(words, words.say("part.charge-cooler"), CHARGE_COOLER));
        }
        if (parts.isEmpty()) {
            say("nothing-in-front");
        } else {
            say("in-front", String.join(", ", parts));
        }
    }

    private void fans() {
        if (!car.hasFans()) {
            say("no-fan");
            return;
        }
        String fans = words.say("fan." + car.token(FAN_DRIVE) + "." + car.token(FAN_MOUNTING), car.count(FAN_COUNT));
        say(
                "fans",
                car.marked(words, fans, FAN_DRIVE, FAN_COUNT, FAN_MOUNTING),
                number(FAN_DIAMETER, Dimension.LENGTH),
                number(FAN_COVER, Dimension.FRACTION),
                option("flaps", FAN_FLAPS));
    }

    private void flows() {
        if (!state.steady()) {
            say("no-state", show(state.outsideK(), Dimension.TEMPERATURE));
            return;
        }
        say(
                "air-flow",
                show(state.airKgPerS(), Dimension.MASS_FLOW),
                show(state.airM3PerS(), Dimension.AIR_FLOW),
                show(state.outsideK(), Dimension.TEMPERATURE),
                show(state.airInK(), Dimension.TEMPERATURE),
                show(state.airOutK(), Dimension.TEMPERATURE));
        say(
                "coolant-flow",
                show(state.radiatorM3PerS(), Dimension.LIQUID_FLOW),
                show(state.engineOutK(), Dimension.TEMPERATURE),
                show(state.radiatorOutK(), Dimension.TEMPERATURE),
                show(state.radiatorW(), Dimension.POWER));
        if (car.is(FAN_DRIVE, FanDrive.ELECTRIC)) {
            say("fan-current", show(state.fanA(), Dimension.CURRENT));
        }
    }

    private void say(String key, Object... arguments) {
        said.add(words.say("say." + key, arguments));
    }

    private String number(BuildField field, Dimension dimension) {
        return car.shown(words, field, dimension);
    }

    private String option(String kind, BuildField field) {
        return car.marked(words, words.say(kind + "." + car.token(field)), field);
    }

    private String show(double si, Dimension dimension) {
        return words.show(si, dimension);
    }
}
