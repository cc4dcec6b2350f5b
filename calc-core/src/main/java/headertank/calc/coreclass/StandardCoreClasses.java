package headertank.calc.coreclass;

import static headertank.calc.coreclass.CoreFigure.BOND_RESISTANCE_M2K_PER_W;
import static headertank.calc.coreclass.CoreFigure.COOLANT_FOULING_M2K_PER_W;
import static headertank.calc.coreclass.CoreFigure.DEPTH_M;
import static headertank.calc.coreclass.CoreFigure.FIN_HEIGHT_M;
import static headertank.calc.coreclass.CoreFigure.FIN_PITCH_M;
import static headertank.calc.coreclass.CoreFigure.FIN_THICKNESS_M;
import static headertank.calc.coreclass.CoreFigure.LOUVER_ANGLE_DEG;
import static headertank.calc.coreclass.CoreFigure.LOUVER_PITCH_M;
import static headertank.calc.coreclass.CoreFigure.LOUVER_SHARE;
import static headertank.calc.coreclass.CoreFigure.TUBE_HEIGHT_M;
import static headertank.calc.coreclass.CoreFigure.TUBE_WALL_M;

import headertank.calc.choice.CoreMaterial;
import headertank.calc.choice.FinKind;
import headertank.calc.quantity.Spread;
import headertank.calc.quantity.Stated;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The classes of core that come with the software. Every figure is common practice, no source, with the spread that we
 * guess for it: depth 15 % (5 % where tubes come in fixed widths), fin height, pitch and louvre angle 10 % (15 % where
 * makers differ most), the rest 10 %.
 */
public final class StandardCoreClasses implements CoreClassSource {

    private static final String SOURCE = "common practice, no source; spread guessed";

    @Override
    public String id() {
        return "standard";
    }

    @Override
    public String version() {
        return "1";
    }

    @Override
    public String source() {
        return SOURCE;
    }

    @Override
    public List<CoreClass> classes() {
        return List.of(
                aluminium("thin-original", "thin original core, aluminium", 1, figures(20, 0.15, 1.25, 0.10, 27, 0.85)),
                aluminium(
                        "dense-aluminium",
                        "dense high-grade core, one deep row, aluminium",
                        1,
                        figures(42, 0.10, 1.30, 0.10, 27, 0.85)),
                aluminium(
                        "bargain-aluminium",
                        "bargain core, coarse fins, aluminium",
                        1,
                        figures(42, 0.15, 1.50, 0.15, 22, 0.75)),
                aluminium(
                        "two-row-aluminium",
                        "two rows of wide tubes, aluminium",
                        2,
                        figures(52.8, 0.05, 1.45, 0.10, 27, 0.85)),
                copperBrass(
                        "old-copper-brass",
                        "old core, plain fins, copper-brass",
                        FinKind.PLAIN,
                        figures(38, 0.15, 2.50, 0.15, 27, 0.85)),
                copperBrass(
                        "copper-brass-louvred",
                        "louvred fins, copper-brass",
                        FinKind.LOUVERED,
                        figures(38, 0.15, 1.50, 0.10, 27, 0.80)));
    }

    private static CoreClass aluminium(String id, String label, int rows, Map<CoreFigure, Stated> figures) {
        return new CoreClass(
                id, label, CoreMaterial.ALUMINIUM, FinKind.LOUVERED, rows, rows > 1 ? 0.002 : 0, figures, SOURCE);
    }

    private static CoreClass copperBrass(String id, String label, FinKind fins, Map<CoreFigure, Stated> figures) {
        figures.put(TUBE_WALL_M, share(0.00013, 0.10));
        figures.put(FIN_THICKNESS_M, share(0.00005, 0.10));
        figures.put(BOND_RESISTANCE_M2K_PER_W, share(5e-6, 0.7));
        return new CoreClass(id, label, CoreMaterial.COPPER_BRASS, fins, 2, 0.006, figures, SOURCE);
    }

    private static Map<CoreFigure, Stated> figures(
            double depthMm,
            double depthSpread,
            double pitchMm,
            double pitchSpread,
            double angleDeg,
            double louverShare) {
        Map<CoreFigure, Stated> f = new EnumMap<>(CoreFigure.class);
        f.put(DEPTH_M, share(depthMm / 1000, depthSpread));
        f.put(TUBE_HEIGHT_M, share(0.0020, 0.10));
        f.put(TUBE_WALL_M, share(0.0003, 0.10));
        f.put(FIN_HEIGHT_M, share(0.0080, 0.10));
        f.put(FIN_PITCH_M, share(pitchMm / 1000, pitchSpread));
        f.put(FIN_THICKNESS_M, share(0.00008, 0.10));
        f.put(LOUVER_PITCH_M, share(0.0011, 0.10));
        f.put(LOUVER_ANGLE_DEG, share(angleDeg, 0.10));
        f.put(LOUVER_SHARE, share(louverShare, 0.05));
        f.put(BOND_RESISTANCE_M2K_PER_W, share(0, 0));
        f.put(COOLANT_FOULING_M2K_PER_W, share(3.5e-5, 0.5));
        return f;
    }

    private static Stated share(double si, double sigma) {
        return Stated.guessed(si).within(Spread.relative(sigma));
    }
}
