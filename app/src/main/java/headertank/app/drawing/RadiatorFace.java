package headertank.app.drawing;

import static headertank.calc.carspec.BuildField.CORE_HEIGHT;
import static headertank.calc.carspec.BuildField.CORE_PASSES;
import static headertank.calc.carspec.BuildField.CORE_TANKS;
import static headertank.calc.carspec.BuildField.CORE_WIDTH;

import headertank.app.drawing.ink.Pen;
import headertank.calc.choice.TankPlacement;

/**
 * The radiator from the front, to scale, with its tanks and the coolant's way through its passes. The way in is on top, the
 * way out at the right.
 */
final class RadiatorFace {

    private static final double TANK = 16;

    private final CarParts car;
    private final Pen pen;
    private final boolean sides;
    private final int passes;
    private final double x;
    private final double y;
    private final double w;
    private final double h;

    /** Fits it under a top edge, against a right edge. */
    RadiatorFace(CarParts car, Pen pen, double right, double top, double mostWidth, double mostHeight) {
        this.car = car;
        this.pen = pen;
        this.sides = car.is(CORE_TANKS, TankPlacement.SIDES);
        this.passes = Math.max(1, car.count(CORE_PASSES));
        double tanksX = sides ? 2 * TANK : 0;
        double tanksY = sides ? 0 : 2 * TANK;
        double scale = Math.min(
                (mostWidth - tanksX) / car.number(CORE_WIDTH), (mostHeight - tanksY) / car.number(CORE_HEIGHT));
        this.w = scale * car.number(CORE_WIDTH);
        this.h = scale * car.number(CORE_HEIGHT);
        this.x = right - w - (sides ? TANK : 0);
        this.y = top + (sides ? 0 : TANK);
    }

    double inX() {
        return sides ? (rightwards(0) ? x - 0.5 * TANK : x + w + 0.5 * TANK) : x + 0.5 * w / passes;
    }

    double inY() {
        return sides ? y : y - TANK;
    }

    double outX() {
        return sides ? x + w + TANK : x + w;
    }

    double outY() {
        return sides ? y + h - 14 : passes % 2 == 1 ? y + h + 0.5 * TANK : y - 0.5 * TANK;
    }

    /** Where sensors sit in the tank that the coolant leaves by. */
    double tankX(int place) {
        return sides ? x + w + 0.5 * TANK : x + w - 12 - 24 * place;
    }

    double tankY(int place) {
        return sides ? y + h - 36 - 24 * place : outY();
    }

    double bottom() {
        return y + h + (sides ? 0 : TANK);
    }

    /** The last pass ends at the right. */
    private boolean rightwards(int pass) {
        return (passes - 1 - pass) % 2 == 0;
    }

    void draw() {
        boolean tanksAssumed = car.assumed(CORE_TANKS);
        pen.box("core", "#dfe9ec", x, y, w, h, car.assumed(CORE_WIDTH, CORE_HEIGHT));
        if (sides) {
            pen.box("tank", Pen.METAL, x - TANK, y, TANK, h, tanksAssumed);
            pen.box("tank", Pen.METAL, x + w, y, TANK, h, tanksAssumed);
        } else {
            pen.box("tank", Pen.METAL, x, y - TANK, w, TANK, tanksAssumed);
            pen.box("tank", Pen.METAL, x, y + h, w, TANK, tanksAssumed);
        }
        for (int pass = 0; pass < passes; pass++) {
            if (sides) {
                across(pass);
            } else {
                down(pass);
            }
        }
    }

    private void across(int pass) {
        boolean assumed = car.assumed(CORE_PASSES);
        double each = h / passes;
        double at = y + each * (pass + 0.5);
        tubes(pass);
        if (rightwards(pass)) {
            pen.arrow("pass", Pen.COOLANT, 3.5, assumed, x + 10, at, x + w - 16, at);
        } else {
            pen.arrow("pass", Pen.COOLANT, 3.5, assumed, x + w - 10, at, x + 16, at);
        }
        if (pass < passes - 1) {
            double wall = y + each * (pass + 1);
            double tank = rightwards(pass) ? x - TANK : x + w;
            pen.line("baffle", Pen.INK, 3, assumed, tank, wall, tank + TANK, wall);
        }
    }

    private void down(int pass) {
        boolean assumed = car.assumed(CORE_PASSES);
        double each = w / passes;
        double at = x + each * (pass + 0.5);
        tubes(pass);
        if (pass % 2 == 0) {
            pen.arrow("pass", Pen.COOLANT, 3.5, assumed, at, y + 10, at, y + h - 16);
        } else {
            pen.arrow("pass", Pen.COOLANT, 3.5, assumed, at, y + h - 10, at, y + 16);
        }
        if (pass < passes - 1) {
            double wall = x + each * (pass + 1);
            double tank = pass % 2 == 0 ? y - TANK : y + h;
            pen.line("baffle", Pen.INK, 3, assumed, wall, tank, wall, tank + TANK);
        }
    }

    /** A few of the tubes of one pass, faint. */
    private void tubes(int pass) {
        double each = (sides ? h : w) / passes;
        int shown = Math.max(2, (int) Math.rint(each / 14));
        for (int i = 0; i < shown; i++) {
            double at = each * (pass + (i + 0.5) / shown);
            if (sides) {
                pen.line("tube", Pen.FAINT, 0.8, false, x, y + at, x + w, y + at);
            } else {
                pen.line("tube", Pen.FAINT, 0.8, false, x + at, y, x + at, y + h);
            }
        }
    }
}
