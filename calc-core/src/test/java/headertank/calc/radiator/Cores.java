package headertank.calc.radiator;

import headertank.calc.choice.FinKind;
import headertank.calc.choice.TankPlacement;

/** Cores that the tests share. */
final class Cores {

    private Cores() {}

    /** One row of 26 mm tubes, aluminium, 0.65 x 0.40 m, fins every 1.27 mm. */
    static CoreGeometry road() {
        return louvered(0.65, 0.40, 0.026, 1, 0, 0.00127);
    }

    /** Two rows of 25.4 mm tubes, aluminium, 0.70 x 0.46 m, fins every 1.45 mm. */
    static CoreGeometry twoRows() {
        return louvered(0.70, 0.46, 0.0254, 2, 0.002, 0.00145);
    }

    static CoreGeometry louvered(double width, double height, double tubeWidth, int rows, double gap, double finPitch) {
        return core(
                width,
                height,
                tubeWidth,
                rows,
                gap,
                0.0003,
                finPitch,
                0.00008,
                FinKind.LOUVERED,
                27,
                0.85,
                180,
                160,
                0);
    }

    static CoreGeometry core(
            double width,
            double height,
            double tubeWidth,
            int rows,
            double gap,
            double tubeWall,
            double finPitch,
            double finThickness,
            FinKind kind,
            double louverAngle,
            double louverShare,
            double finConductivity,
            double tubeConductivity,
            double bond) {
        return new CoreGeometry(
                new CoreGeometry.Face(width, height),
                new CoreGeometry.Tubes(tubeWidth, 0.002, tubeWall, rows, gap, tubeConductivity, false),
                new CoreGeometry.Fins(
                        kind,
                        0.008,
                        finPitch,
                        finThickness,
                        finConductivity,
                        new CoreGeometry.Louvers(0.0011, louverAngle, louverShare * 0.008)),
                new CoreGeometry.Resistances(bond, 3.5e-5, 0));
    }

    static Radiator radiator(CoreGeometry core, int passes) {
        return new Radiator(new RadiatorSpec(core, TankPlacement.SIDES, passes, 0, true));
    }
}
