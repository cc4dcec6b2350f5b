package headertank.app.drawing;

import static headertank.calc.carspec.BuildField.CORE_HEIGHT;
import static headertank.calc.carspec.BuildField.CORE_WIDTH;
import static headertank.calc.carspec.BuildField.FAN_COUNT;
import static headertank.calc.carspec.BuildField.FAN_COVER;
import static headertank.calc.carspec.BuildField.FAN_DIAMETER;
import static headertank.calc.carspec.BuildField.FAN_DRIVE;
import static headertank.calc.carspec.BuildField.FAN_FLAPS;
import static headertank.calc.carspec.BuildField.FAN_MOUNTING;

import headertank.app.drawing.ink.Pen;
import headertank.app.unit.Dimension;
import headertank.calc.choice.FanDrive;
import headertank.calc.choice.YesNo;

/** The core from the front, to scale, with its fans and the share of it that the shroud covers. */
final class FanFace {

    private static final double LEFT = 12;
    private static final double MOST_WIDTH = 206;
    private static final double MOST_HEIGHT = 150;
    private static final double TEXT_X = 236;
    private static final double TEXT_WIDTH = 234;
    private static final int BLADES = 6;
    private static final double HUB_SHARE = 0.35;

    private final CarParts car;
    private final StateFigures state;
    private final Words words;
    private final Pen pen;

    FanFace(CarParts car, StateFigures state, Words words, Pen pen) {
        this.car = car;
        this.state = state;
        this.words = words;
        this.pen = pen;
    }

    /** Draws below y; returns where the drawing ends. */
    double draw(double y) {
        double scale = Math.min(MOST_WIDTH / car.number(CORE_WIDTH), MOST_HEIGHT / car.number(CORE_HEIGHT));
        double w = scale * car.number(CORE_WIDTH);
        double h = scale * car.number(CORE_HEIGHT);
        double x = LEFT + 0.5 * (MOST_WIDTH - w);
        pen.box("core-face", Pen.METAL, x, y, w, h, car.assumed(CORE_WIDTH, CORE_HEIGHT));
        double written = text(y + 14);
        if (car.hasFans()) {
            double share = Math.sqrt(Math.max(0.05, Math.min(1, car.number(FAN_COVER))));
            double sw = share * w;
            double sh = share * h;
            double sx = x + 0.5 * (w - sw);
            double sy = y + 0.5 * (h - sh);
            pen.box("shroud", Pen.PAPER, sx, sy, sw, sh, car.assumed(FAN_COVER));
            flaps(x, y, w, h, sx, sy, sh);
            fans(sx, sy, sw, sh, scale);
        }
        return Math.max(y + h, written) + 10;
    }

    private void flaps(double x, double y, double w, double h, double sx, double sy, double sh) {
        double margin = sx - x;
        if (!car.is(FAN_FLAPS, YesNo.YES) || margin < 3) {
            return;
        }
        for (int i = 0; i < 3; i++) {
            double at = sy + sh * (i + 0.5) / 3;
            pen.line("flap", Pen.INK, 2, car.assumed(FAN_FLAPS), x + 1, at - 5, x + margin - 1, at + 5);
            pen.line("flap", Pen.INK, 2, car.assumed(FAN_FLAPS), x + w - margin + 1, at - 5, x + w - 1, at + 5);
        }
    }

    /** To scale where the fans fit in; else as large as their places allow. */
    private void fans(double sx, double sy, double sw, double sh, double scale) {
        int count = car.count(FAN_COUNT);
        int columns = count == 4 ? 2 : count;
        int rows = count == 4 ? 2 : 1;
        if (count == 2 && sh > 1.3 * sw) {
            columns = 1;
            rows = 2;
        }
        double cellW = sw / columns;
        double cellH = sh / rows;
        double r = Math.min(0.5 * scale * car.number(FAN_DIAMETER), 0.5 * Math.min(cellW, cellH));
        for (int i = 0; i < count; i++) {
            double cx = sx + cellW * (i % columns + 0.5);
            double cy = sy + cellH * (i / columns + 0.5);
            fan(cx, cy, r);
        }
    }

    private void fan(double cx, double cy, double r) {
        pen.circle("fan", Pen.PAPER, cx, cy, r, car.assumed(FAN_DIAMETER, FAN_COUNT));
        double hub = HUB_SHARE * r;
        for (int b = 0; b < BLADES; b++) {
            double a = 2 * Math.PI * b / BLADES;
            double ahead = a + 0.55;
            String blade = Pen.text(
                    "M%s %sL%s %sA%s %s 0 0 1 %s %sz",
                    cx + hub * Math.cos(a),
                    cy + hub * Math.sin(a),
                    cx + 0.92 * r * Math.cos(a),
                    cy + 0.92 * r * Math.sin(a),
                    0.92 * r,
                    0.92 * r,
                    cx + 0.92 * r * Math.cos(ahead),
                    cy + 0.92 * r * Math.sin(ahead));
            pen.path("blade", blade, Pen.FAINT, Pen.NONE, 0, false);
        }
        pen.circle("fan-hub", Pen.METAL, cx, cy, hub, false);
    }

    private double text(double y) {
        if (!car.hasFans()) {
            return pen.write("fan", TEXT_X, y, TEXT_WIDTH, words.say("fan.none"), 15, true);
        }
        String fans = words.say("fan." + car.token(FAN_DRIVE) + "." + car.token(FAN_MOUNTING), car.count(FAN_COUNT));
        double at = pen.write("fan", TEXT_X, y, TEXT_WIDTH, fans, 15, true);
        String size = words.say("fan.size", car.shown(words, FAN_DIAMETER, Dimension.LENGTH));
        at = pen.write("fan", TEXT_X, at + 2, TEXT_WIDTH, size, 13, false);
        String cover = words.say("shroud", car.shown(words, FAN_COVER, Dimension.FRACTION));
        at = pen.write("shroud", TEXT_X, at + 2, TEXT_WIDTH, cover, 13, false);
        String flaps = car.marked(words, words.say("flaps." + car.token(FAN_FLAPS)), FAN_FLAPS);
        at = pen.write("flaps", TEXT_X, at + 2, TEXT_WIDTH, flaps, 13, false);
        if (car.is(FAN_DRIVE, FanDrive.ELECTRIC)) {
            at = pen.write("fan-current", TEXT_X, at + 6, TEXT_WIDTH, words.say("fan.current"), 13, false);
            at = pen.write(
                    "fan-current", TEXT_X, at + 2, TEXT_WIDTH, words.show(state.fanA(), Dimension.CURRENT), 15, true);
        }
        return at;
    }
}
