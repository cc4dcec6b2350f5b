package headertank.app.drawing;

import static headertank.calc.carspec.BuildField.AIR_DUCT;
import static headertank.calc.carspec.BuildField.AIR_EXIT;
import static headertank.calc.carspec.BuildField.AIR_EXIT_AREA;
import static headertank.calc.carspec.BuildField.AIR_INLET;
import static headertank.calc.carspec.BuildField.CHARGE_COOLER;
import static headertank.calc.carspec.BuildField.CONDENSER;
import static headertank.calc.carspec.BuildField.CORE_DEPTH;
import static headertank.calc.carspec.BuildField.CORE_HEIGHT;
import static headertank.calc.carspec.BuildField.CORE_TILT;
import static headertank.calc.carspec.BuildField.CORE_WIDTH;
import static headertank.calc.carspec.BuildField.FAN_COUNT;
import static headertank.calc.carspec.BuildField.FAN_DRIVE;
import static headertank.calc.carspec.BuildField.FAN_MOUNTING;
import static headertank.calc.carspec.BuildField.OIL_COOLER;

import headertank.app.drawing.ink.DrawingPanel;
import headertank.app.drawing.ink.Pen;
import headertank.app.drawing.ink.TextWidth;
import headertank.app.unit.Dimension;
import headertank.calc.carspec.BuildField;
import headertank.calc.choice.AirExit;
import headertank.calc.choice.Ducting;
import headertank.calc.choice.FanDrive;
import headertank.calc.choice.YesNo;
import java.util.ArrayList;
import java.util.List;

/**
 * The air's way through the car from the side, the front of the car at the left: inlet, duct, coolers in front, core, fans,
 * exit; below it the core from the front with its fans and shroud.
 */
final class AirSideDrawing {

    private static final int WIDTH = 480;
    private static final double CORE_X = 232;
    private static final double HALF = 50;
    private static final double LIP_X = 34;
    private static final double BAY_X = 346;

    private final CarParts car;
    private final StateFigures state;
    private final Words words;
    private final Pen pen = new Pen();
    private final double tilt;
    private final double thick;
    private double midY;

    /** A plate across the air: where its middle lies, how thick it is, and its name. */
    private record Plate(String part, double x, double thick, String fill, boolean assumed, String name) {}

    private AirSideDrawing(CarParts car, StateFigures state, Words words) {
        this.car = car;
        this.state = state;
        this.words = words;
        this.tilt = car.number(CORE_TILT);
        this.thick = 8 + Math.min(16, 200 * car.number(CORE_DEPTH));
    }

    static DrawingPanel of(CarParts car, StateFigures state, Words words) {
        return new AirSideDrawing(car, state, words).draw();
    }

    private DrawingPanel draw() {
        List<Plate> plates = plates();
        double top = 20 + 19 * plates.size();
        midY = top + 76;
        body(top);
        air();
        plates.forEach(this::plate);
        names(plates);
        double y = Math.max(figures(top + 180), openings(top + 180));
        return pen.panel("air", WIDTH, new FanFace(car, state, words, pen).draw(y + 6));
    }

    private List<Plate> plates() {
        List<Plate> before = new ArrayList<>();
        if (car.pushing()) {
            before.add(fan(0));
        }
        cooler(before, "charge-cooler", CHARGE_COOLER, car.is(CHARGE_COOLER, YesNo.YES));
        cooler(before, "condenser", CONDENSER, car.is(CONDENSER, YesNo.YES));
        cooler(before, "oil-cooler", OIL_COOLER, car.oilCoolerInAir());
        List<Plate> all = new ArrayList<>();
        double x = CORE_X - 0.5 * thick / Math.cos(tilt) - 18 - 23 * Math.max(0, before.size() - 1);
        for (int i = before.size() - 1; i >= 0; i--) {
            Plate p = before.get(i);
            all.add(new Plate(p.part(), x, p.thick(), p.fill(), p.assumed(), p.name()));
            x += 23;
        }
        String tilted = tilt > 0.03
                ? words.say("core.tilted", car.shown(words, CORE_TILT, Dimension.ANGLE))
                : words.say("core");
        all.add(new Plate("core", CORE_X, thick, "#9fbcc5", car.assumed(CORE_WIDTH, CORE_HEIGHT, CORE_DEPTH), tilted));
        if (car.hasFans() && !car.pushing()) {
            double clear = onEngine() ? HALF * Math.sin(tilt) : 0;
            all.add(fan(CORE_X + clear + 0.5 * thick / Math.cos(tilt) + 20 - 0.2 * clear));
        }
        return all;
    }

    /** A clutch fan behind the core sits on the engine, upright however the core leans. */
    private boolean onEngine() {
        return car.is(FAN_DRIVE, FanDrive.CLUTCH) && !car.pushing();
    }

    private void cooler(List<Plate> before, String part, BuildField field, boolean present) {
        if (present) {
            String name = car.marked(words, words.say("part." + part), field);
            before.add(new Plate(part, 0, 8, Pen.METAL, car.assumed(field), name));
        }
    }

    private Plate fan(double x) {
        String key = "fan-side." + car.token(FAN_DRIVE);
        String name = car.marked(words, words.say(key, car.count(FAN_COUNT)), FAN_DRIVE, FAN_COUNT, FAN_MOUNTING);
        return new Plate("fan-side", x, 7, Pen.PAPER, car.assumed(FAN_DRIVE, FAN_MOUNTING), name);
    }

    /** A plate that leans back with the core, its top towards the engine; a fan on the engine stays upright. */
    private void plate(Plate p) {
        double lean = p.part().equals("fan-side") && onEngine() ? 0 : tilt;
        double half = p.part().equals("fan-side") ? HALF - 8 : HALF;
        double ex = half * Math.sin(lean);
        double ey = half * Math.cos(lean);
        double nx = 0.5 * p.thick() * Math.cos(lean);
        double ny = 0.5 * p.thick() * Math.sin(lean);
        pen.shape(
                p.part(),
                p.fill(),
                Pen.INK,
                1.6,
                p.assumed(),
                p.x() + ex - nx,
                midY - ey - ny,
                p.x() + ex + nx,
                midY - ey + ny,
                p.x() - ex + nx,
                midY + ey + ny,
                p.x() - ex - nx,
                midY + ey - ny);
        if (p.part().equals("fan-side")) {
            double away = car.pushing() ? -6 : 6;
            if (onEngine()) {
                away = BAY_X + 14 - p.x();
                pen.box("clutch", Pen.FAINT, p.x() + 6, midY - 7, 9, 14, p.assumed());
            }
            pen.line("fan-shaft", Pen.INK, 3, false, p.x(), midY, p.x() + away, midY);
        }
    }

    /** Each name on a line of its own above its plate, the foremost plate highest, so that no leader crosses a name. */
    private void names(List<Plate> plates) {
        double y = 16;
        for (Plate p : plates) {
            double x = Math.max(8, p.x() + (HALF - 4) * Math.sin(tilt));
            boolean upright = p.part().equals("fan-side") && onEngine();
            double topX = upright ? p.x() : x;
            double textX = Math.min(
                    topX - 3, WIDTH - 10 - TextWidth.of(p.name(), 13, p.part().equals("core")));
            pen.write(p.part(), textX, y, 1000, p.name(), 13, p.part().equals("core"));
            pen.line(
                    "leader",
                    Pen.SOFT,
                    0.8,
                    false,
                    topX,
                    y + 4,
                    topX,
                    midY - (HALF - 4) * Math.cos(upright ? 0 : tilt));
            y += 19;
        }
    }

    private void body(double top) {
        double floor = top + 150;
        double open = 2 * Math.max(14, Math.min(46, 46 * Math.sqrt(share(AIR_INLET) / 0.8)));
        double face = HALF * Math.cos(tilt);
        boolean vent = car.is(AIR_EXIT, AirExit.HOOD_VENT);
        boolean under = car.is(AIR_EXIT, AirExit.UNDER_CAR);
        boolean inletAssumed = car.assumed(AIR_INLET);
        boolean exitAssumed = car.assumed(AIR_EXIT);
        pen.line("hood", Pen.INK, 2.2, false, LIP_X, midY - 0.5 * open, LIP_X, top + 8, vent ? 312 : 470, top + 8);
        pen.line("floor", Pen.INK, 2.2, false, LIP_X, midY + 0.5 * open, LIP_X, floor, under ? 300 : 470, floor);
        pen.line("inlet", Pen.INK, 4, inletAssumed, LIP_X, midY - 0.5 * open, LIP_X, midY - 0.5 * open - 14);
        pen.line("inlet", Pen.INK, 4, inletAssumed, LIP_X, midY + 0.5 * open, LIP_X, midY + 0.5 * open + 14);
        if (vent) {
            pen.line("hood", Pen.INK, 2.2, false, 352, top + 8, 470, top + 8);
            pen.arrow("exit", Pen.AIR, 3, exitAssumed, 308, midY - 30, 330, midY - 46, 332, top - 2);
        } else if (under) {
            pen.line("floor", Pen.INK, 2.2, false, 344, floor, 470, floor);
            pen.arrow("exit", Pen.AIR, 3, exitAssumed, 300, midY + 30, 314, midY + 46, 322, floor + 4);
        } else {
            pen.arrow("exit", Pen.AIR, 3, exitAssumed, 300, midY + 46, 328, midY + 46);
            pen.line("exit-wall", Pen.STOP, 4, exitAssumed, 340, midY + 28, 340, midY + 64);
        }
        pen.box("engine-side", Pen.METAL, BAY_X + 14, midY - 34, 96, 100, false);
        duct(open, face);
    }

    private double share(BuildField area) {
        return car.number(area) / (car.number(CORE_WIDTH) * car.number(CORE_HEIGHT));
    }

    /** A sealed duct reaches from lips to core; one that is sealed in part stops short and has a gap; an open one is none. */
    private void duct(double open, double face) {
        boolean assumed = car.assumed(AIR_DUCT);
        double shift = HALF * Math.sin(tilt);
        double near = 0.5 * thick / Math.cos(tilt);
        for (int side = -1; side <= 1; side += 2) {
            double x0 = LIP_X;
            double y0 = midY + side * 0.5 * open;
            double x1 = CORE_X - side * shift - near;
            double y1 = midY + side * (face + 2);
            if (car.is(AIR_DUCT, Ducting.SEALED)) {
                pen.line("duct", Pen.INK, 2.2, assumed, x0, y0, x1, y1);
            } else if (car.is(AIR_DUCT, Ducting.PARTLY)) {
                pen.line("duct", Pen.INK, 2.2, assumed, x0, y0, x0 + 0.4 * (x1 - x0), y0 + 0.4 * (y1 - y0));
                pen.line(
                        "duct",
                        Pen.INK,
                        2.2,
                        assumed,
                        x0 + 0.6 * (x1 - x0),
                        y0 + 0.6 * (y1 - y0),
                        x0 + 0.9 * (x1 - x0),
                        y0 + 0.9 * (y1 - y0));
            } else {
                pen.arrow(
                        "leak",
                        Pen.AIR,
                        1.4,
                        assumed,
                        x0 + 30,
                        midY + side * 18,
                        x0 + 60,
                        midY + side * (face + 14),
                        x0 + 110,
                        midY + side * (face + 16));
            }
        }
    }

    private void air() {
        for (int i = -1; i <= 1; i++) {
            pen.arrow("air-in", Pen.AIR, 2.2, false, 4, midY + 12 * i, LIP_X + 26, midY + 12 * i);
        }
    }

    private double figures(double y) {
        double first = figure("outside", 12, y, words.show(state.outsideK(), Dimension.TEMPERATURE));
        double second = figure("air-in", 170, y, words.show(state.airInK(), Dimension.TEMPERATURE));
        double third = figure("air-out", 328, y, words.show(state.airOutK(), Dimension.TEMPERATURE));
        String speed = words.say("road-speed", words.show(state.roadSpeedMPerS(), Dimension.SPEED));
        first = pen.write("outside", 12, first, 146, speed, 13, false);
        second = pen.write("air-flow", 170, second, 146, words.show(state.airKgPerS(), Dimension.MASS_FLOW), 15, true);
        second = pen.write("air-flow", 170, second, 146, words.show(state.airM3PerS(), Dimension.AIR_FLOW), 13, false);
        String exit = car.marked(words, words.say("exit." + car.token(AIR_EXIT)), AIR_EXIT);
        third = pen.write("exit", 328, third, 146, exit, 13, false);
        return Math.max(first, Math.max(second, third));
    }

    private double figure(String part, double x, double y, String value) {
        double next = pen.write(part, x, y, 146, words.say(part), 13, false);
        return pen.write(part, x, next + 2, 146, value, 15, true);
    }

    private double openings(double y) {
        String inlet = words.say(
                "openings",
                car.shown(words, AIR_INLET, Dimension.AREA),
                car.marked(words, words.say("duct." + car.token(AIR_DUCT)), AIR_DUCT),
                car.shown(words, AIR_EXIT_AREA, Dimension.AREA));
        return pen.write("openings", 12, y + 92, 456, inlet, 13, false);
    }
}
