package headertank.app.drawing;

import static headertank.calc.carspec.BuildField.CAP_PRESSURE;
import static headertank.calc.carspec.BuildField.CORE_DEPTH;
import static headertank.calc.carspec.BuildField.CORE_HEIGHT;
import static headertank.calc.carspec.BuildField.CORE_PASSES;
import static headertank.calc.carspec.BuildField.CORE_TANKS;
import static headertank.calc.carspec.BuildField.CORE_WIDTH;
import static headertank.calc.carspec.BuildField.FAN_DRIVE;
import static headertank.calc.carspec.BuildField.FAN_SENSOR;
import static headertank.calc.carspec.BuildField.GAUGE_SENSOR;
import static headertank.calc.carspec.BuildField.HOSE_DIAMETER;
import static headertank.calc.carspec.BuildField.OIL_COOLER;
import static headertank.calc.carspec.BuildField.PUMP_DRIVE;
import static headertank.calc.carspec.BuildField.THERMOSTAT;
import static headertank.calc.carspec.BuildField.THERMOSTAT_BYPASS;

import headertank.app.drawing.ink.DrawingPanel;
import headertank.app.drawing.ink.Pen;
import headertank.app.unit.Dimension;
import headertank.calc.carspec.BuildField;
import headertank.calc.choice.BypassState;
import headertank.calc.choice.FanDrive;
import headertank.calc.choice.PumpDrive;
import headertank.calc.choice.SensorPlacement;
import headertank.calc.choice.ThermostatFitting;

/** The coolant's way round: engine, thermostat and bypass, hoses, radiator, pump, header tank, and where the sensors sit. */
final class CoolantSideDrawing {

    private static final int WIDTH = 480;
    private static final double HOSE_Y = 124;
    private static final double RETURN_Y = 394;
    private static final double RETURN_X = 210;
    private static final double BYPASS_X = 308;
    private static final double ENGINE_X = 336;
    private static final double ENGINE_Y = 154;
    private static final double BLOCK_Y = 222;
    private static final double ENGINE_BOTTOM = 352;
    private static final double ENGINE_WIDTH = 134;

    private final CarParts car;
    private final StateFigures state;
    private final Words words;
    private final Pen pen = new Pen();
    private final RadiatorFace radiator;

    private CoolantSideDrawing(CarParts car, StateFigures state, Words words) {
        this.car = car;
        this.state = state;
        this.words = words;
        this.radiator = new RadiatorFace(car, pen, 198, 156, 186, 196);
    }

    static DrawingPanel of(CarParts car, StateFigures state, Words words) {
        return new CoolantSideDrawing(car, state, words).draw();
    }

    private DrawingPanel draw() {
        hoses();
        radiator.draw();
        engine();
        thermostat();
        pump();
        headerTank();
        radiatorFigures();
        return pen.panel("coolant", WIDTH, sensors(core(464)) + 2);
    }

    private void hoses() {
        double width = 3 + Math.min(4, 60 * car.number(HOSE_DIAMETER));
        boolean assumed = car.assumed(HOSE_DIAMETER);
        pen.line("hose-out", Pen.COOLANT, width, assumed, 356, ENGINE_Y, 356, HOSE_Y, 330, HOSE_Y);
        pen.arrow(
                "hose-hot",
                Pen.COOLANT,
                width,
                assumed,
                298,
                HOSE_Y,
                radiator.inX(),
                HOSE_Y,
                radiator.inX(),
                radiator.inY() - 8);
        pen.arrow(
                "hose-cold",
                Pen.COOLANT,
                width,
                assumed,
                radiator.outX(),
                radiator.outY(),
                RETURN_X,
                radiator.outY(),
                RETURN_X,
                RETURN_Y,
                274,
                RETURN_Y);
        pen.line("hose-pump", Pen.COOLANT, width, assumed, 320, RETURN_Y, 356, RETURN_Y, 356, ENGINE_BOTTOM);
    }

    private void engine() {
        pen.box("block", Pen.METAL, ENGINE_X, BLOCK_Y, ENGINE_WIDTH, ENGINE_BOTTOM - BLOCK_Y, false);
        pen.shape(
                "head",
                Pen.METAL,
                Pen.INK,
                1.6,
                false,
                ENGINE_X + 6,
                ENGINE_Y,
                ENGINE_X + ENGINE_WIDTH - 6,
                ENGINE_Y,
                ENGINE_X + ENGINE_WIDTH,
                BLOCK_Y,
                ENGINE_X,
                BLOCK_Y);
        pen.write("head", ENGINE_X + 14, ENGINE_Y + 20, 110, words.say("head"), 13, true);
        double y = pen.write("block", ENGINE_X + 14, BLOCK_Y + 20, 110, words.say("block"), 13, true);
        String oil = words.say("oil", words.show(state.oilK(), Dimension.TEMPERATURE));
        y = pen.write("oil", ENGINE_X + 14, y + 30, 116, oil, 12, false);
        if (car.oilCoolerInCoolant()) {
            String cooler = car.marked(words, words.say("oil-cooler-coolant"), OIL_COOLER);
            pen.box("oil-cooler", Pen.PAPER, ENGINE_X + ENGINE_WIDTH - 12, y - 10, 18, 34, car.assumed(OIL_COOLER));
            pen.write("oil-cooler", ENGINE_X + 14, y + 2, 106, cooler, 12, false);
        }
    }

    private void thermostat() {
        boolean fitted = car.is(THERMOSTAT, ThermostatFitting.FITTED);
        boolean assumed = car.assumed(THERMOSTAT);
        pen.box("thermostat", Pen.PAPER, 290, HOSE_Y - 15, 42, 30, assumed);
        if (fitted) {
            pen.shape("valve", Pen.COOLANT, Pen.NONE, 0, false, 298, HOSE_Y - 9, 311, HOSE_Y, 298, HOSE_Y + 9);
            pen.shape("valve", Pen.COOLANT, Pen.NONE, 0, false, 324, HOSE_Y - 9, 311, HOSE_Y, 324, HOSE_Y + 9);
        } else {
            pen.arrow("valve-gone", Pen.COOLANT, 2, false, 328, HOSE_Y, 300, HOSE_Y);
        }
        String lift = fitted
                ? words.say("thermostat.FITTED", words.show(state.lift(), Dimension.FRACTION))
                : words.say("thermostat.REMOVED");
        pen.write("thermostat", 372, HOSE_Y - 28, 102, car.marked(words, lift, THERMOSTAT), 12, false);
        bypass();
    }

    /** Wide when open, thin with a mark across when restricted, crossed out when blocked, with a valve when it closes. */
    private void bypass() {
        boolean assumed = car.assumed(THERMOSTAT_BYPASS);
        double from = HOSE_Y + 15;
        double to = RETURN_Y - 24;
        if (car.is(THERMOSTAT_BYPASS, BypassState.BLOCKED)) {
            pen.line("bypass", Pen.FAINT, 2, assumed, BYPASS_X, from, BYPASS_X, to);
            pen.line("bypass-blocked", Pen.STOP, 3, false, BYPASS_X - 7, 203, BYPASS_X + 7, 217);
            pen.line("bypass-blocked", Pen.STOP, 3, false, BYPASS_X - 7, 217, BYPASS_X + 7, 203);
        } else {
            double width = car.is(THERMOSTAT_BYPASS, BypassState.OPEN) ? 4 : 2;
            pen.arrow("bypass", Pen.COOLANT, width, assumed, BYPASS_X, from, BYPASS_X, to);
        }
        if (car.is(THERMOSTAT_BYPASS, BypassState.RESTRICTED)) {
            pen.line("bypass-restricted", Pen.INK, 3, false, BYPASS_X - 8, 210, BYPASS_X - 2, 210);
            pen.line("bypass-restricted", Pen.INK, 3, false, BYPASS_X + 2, 210, BYPASS_X + 8, 210);
        }
        if (car.is(THERMOSTAT_BYPASS, BypassState.CLOSES_WITH_LIFT)) {
            pen.shape("bypass-valve", Pen.PAPER, Pen.INK, 1.4, false, 301, 203, 315, 203, 308, 210, 315, 217, 301, 217);
        }
        double y = pen.write("bypass", 220, 184, 78, words.say("bypass"), 12, true);
        String how = car.marked(words, words.say("bypass." + car.token(THERMOSTAT_BYPASS)), THERMOSTAT_BYPASS);
        y = pen.write("bypass", 220, y, 78, how, 12, false);
        pen.write("bypass", 220, y, 78, words.show(state.bypassM3PerS(), Dimension.LIQUID_FLOW), 12, false);
    }

    private void pump() {
        boolean assumed = car.assumed(PUMP_DRIVE);
        pen.circle("pump", Pen.PAPER, 298, RETURN_Y, 22, assumed);
        pen.shape("pump-wheel", Pen.COOLANT, Pen.NONE, 0, false, 288, RETURN_Y - 12, 312, RETURN_Y, 288, RETURN_Y + 12);
        if (car.is(PUMP_DRIVE, PumpDrive.ENGINE)) {
            pen.line("belt", Pen.INK, 1.6, assumed, 303, RETURN_Y - 21, 436, ENGINE_BOTTOM - 6);
            pen.line("belt", Pen.INK, 1.6, assumed, 303, RETURN_Y + 21, 441, ENGINE_BOTTOM + 17);
            pen.circle("pulley", Pen.PAPER, 438, ENGINE_BOTTOM + 6, 12, false);
        } else {
            pen.box("motor", Pen.PAPER, 286, RETURN_Y + 22, 24, 16, assumed);
            pen.line(
                    "motor",
                    Pen.INK,
                    2,
                    false,
                    300,
                    RETURN_Y + 24,
                    294,
                    RETURN_Y + 31,
                    302,
                    RETURN_Y + 30,
                    296,
                    RETURN_Y + 37);
        }
        String pump = car.marked(words, words.say("pump." + car.token(PUMP_DRIVE)), PUMP_DRIVE);
        pen.write("pump", 324, RETURN_Y + 38, 148, pump, 13, false);
    }

    private void headerTank() {
        boolean assumed = car.assumed(CAP_PRESSURE);
        pen.line("header-hose", Pen.COOLANT, 2, false, 232, 76, 232, HOSE_Y);
        pen.box("header-tank", Pen.PAPER, 200, 34, 64, 42, assumed);
        pen.path("header-level", Pen.points(201, 56, 263, 56, 263, 75, 201, 75) + "z", "#9fbcc5", Pen.NONE, 0, false);
        pen.box("cap", Pen.INK, 220, 22, 24, 12, false);
        double y = pen.write("cap", 274, 34, 196, words.say("cap"), 13, false);
        y = pen.write("cap", 274, y + 2, 196, car.shown(words, CAP_PRESSURE, Dimension.PRESSURE_GAUGE), 15, true);
        String boils = words.say("boils", words.show(state.boilingK(), Dimension.TEMPERATURE));
        pen.write("cap", 274, y, 196, boils, 13, false);
        y = pen.write("engine-out", 12, 34, 180, words.say("engine-out"), 13, false);
        y = pen.write("engine-out", 12, y + 2, 180, words.show(state.engineOutK(), Dimension.TEMPERATURE), 15, true);
        y = pen.write("flow", 12, y + 4, 180, words.say("flow"), 13, false);
        pen.write("flow", 12, y + 2, 180, words.show(state.radiatorM3PerS(), Dimension.LIQUID_FLOW), 15, true);
    }

    private void radiatorFigures() {
        double top = Math.min(378, radiator.bottom() + 26);
        double y = pen.write("radiator-out", 12, top, 186, words.say("radiator-out"), 13, false);
        y = pen.write(
                "radiator-out", 12, y + 2, 186, words.show(state.radiatorOutK(), Dimension.TEMPERATURE), 15, true);
        y = pen.write("radiator-heat", 12, y + 2, 186, words.say("radiator-heat"), 13, false);
        pen.write("radiator-heat", 12, y + 2, 186, words.show(state.radiatorW(), Dimension.POWER), 15, true);
    }

    private double core(double y) {
        String size = words.say(
                "core.size",
                words.number(car.number(CORE_WIDTH), Dimension.LENGTH),
                words.number(car.number(CORE_HEIGHT), Dimension.LENGTH),
                words.show(car.number(CORE_DEPTH), Dimension.LENGTH));
        String plumbing = words.say(
                "core.plumbing",
                car.marked(words, size, CORE_WIDTH, CORE_HEIGHT, CORE_DEPTH),
                car.marked(words, words.say("passes", car.count(CORE_PASSES)), CORE_PASSES),
                car.marked(words, words.say("tanks." + car.token(CORE_TANKS)), CORE_TANKS));
        return pen.write("core", 12, y, 456, plumbing, 13, false);
    }

    /** A symbol at the sensor's place, and the same symbol again before its words. */
    private double sensors(double y) {
        sensor(GAUGE_SENSOR, 0);
        String gauge = words.say("gauge." + car.token(GAUGE_SENSOR), words.show(state.gaugeK(), Dimension.TEMPERATURE));
        double at = key(GAUGE_SENSOR, y + 8, gauge);
        if (!car.is(FAN_DRIVE, FanDrive.ELECTRIC)) {
            return at;
        }
        sensor(FAN_SENSOR, 1);
        return key(FAN_SENSOR, at + 8, words.say("fan-sensor." + car.token(FAN_SENSOR)));
    }

    private double key(BuildField field, double y, String text) {
        symbol(name(field) + "-key", field, 20, y - 4);
        return pen.write(name(field), 36, y, 432, car.marked(words, text, field), 13, false);
    }

    private void sensor(BuildField field, int place) {
        switch (car.option(field, SensorPlacement.class)) {
            case HEAD -> symbol(name(field), field, ENGINE_X + 26 + 30 * place, ENGINE_Y + 44);
            case BLOCK -> symbol(name(field), field, ENGINE_X + 26 + 30 * place, BLOCK_Y + 40);
            case RADIATOR_HOSE -> symbol(name(field), field, 252 + 24 * place, HOSE_Y);
            case TANK -> symbol(name(field), field, radiator.tankX(place), radiator.tankY(place));
        }
    }

    private static String name(BuildField field) {
        return field == GAUGE_SENSOR ? "gauge" : "fan-sensor";
    }

    private void symbol(String part, BuildField field, double x, double y) {
        boolean assumed = car.assumed(field);
        if (field == GAUGE_SENSOR) {
            pen.circle(part, Pen.PAPER, x, y, 9, assumed);
            pen.line(part + "-needle", Pen.STOP, 2.2, false, x - 1, y + 3, x + 4, y - 5);
        } else {
            pen.shape(part, Pen.PAPER, Pen.INK, 1.6, assumed, x, y - 10, x + 10, y, x, y + 10, x - 10, y);
            pen.circle(part + "-dot", Pen.INK, x, y, 2, false);
        }
    }
}
