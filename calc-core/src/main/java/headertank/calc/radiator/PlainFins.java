package headertank.calc.radiator;

import headertank.calc.quantity.Note;
import headertank.calc.quantity.NoteText;
import headertank.calc.quantity.Range;
import java.util.List;
import org.hipparchus.util.FastMath;

/**
 * Heat transfer and friction of plain fins, as laminar flow that develops between two plates; Re on D_h = 2 (F_p - d).
 *
 * <p>Nu = 7.54 + 0.03 Gz/(1 + 0.016 Gz^(2/3)), Gz = Re Pr D_h/T_d (form of Hausen, from memory). Fanning friction, with
 * the growth of momentum at the entry: f Re = 3.44/sqrt(x) + (24 + 0.674/(4 x) - 3.44/sqrt(x))/(1 + 2.9e-5/x^2), x =
 * T_d/(D_h Re) (R. K. Shah, A. L. London, Laminar Flow Forced Convection in Ducts, 1978, parallel plates, from memory).
 *
 * <p>Range: laminar, Re up to 2300; above, the same equations with a note. Both are taken 1.3 times for ruffles. One standard deviation 25 %
 * for heat, 15 % for friction.
 */
public final class PlainFins implements AirSide {

    /**
     * Plain fins of car radiators are ruffled, serpentine or dimpled; what that adds over flat plates [-]. W. M. Kays and A. L.
     * London measured flat tubes with plain fins at some 0.7 of flat plates and with ruffled ones at 1.6 (Compact Heat Exchangers,
     * from memory), which is also the spread of 25 %.
     */
    private static final double RUFFLED = 1.3;

    private static final Range COVERED_RE = Range.of(0, 2300);

    private final double diameterM;
    private final double depthM;

    /**
     * @param finPitchM F_p [m]
     * @param finThicknessM d [m]
     * @param depthM T_d [m]
     */
    public PlainFins(double finPitchM, double finThicknessM, double depthM) {
        this.diameterM = 2 * (finPitchM - finThicknessM);
        this.depthM = depthM;
    }

    @Override
    public double reynoldsLengthM() {
        return diameterM;
    }

    /** @return Nusselt number on D_h [-] */
    public double nusselt(double reynolds, double prandtl) {
        return 7.54 + TubeFlow.entryTerm(Math.max(0, reynolds) * prandtl * diameterM / depthM);
    }

    @Override
    public double colburn(double reynolds, double prandtl) {
        double re = Math.max(1e-3, reynolds);
        return RUFFLED * nusselt(re, prandtl) / (re * FastMath.cbrt(prandtl));
    }

    @Override
    public double friction(double reynolds) {
        double re = Math.max(1e-3, reynolds);
        double x = depthM / (diameterM * re);
        double entry = 3.44 / FastMath.sqrt(x);
        return RUFFLED * (entry + (24 + 0.674 / (4 * x) - entry) / (1 + 2.9e-5 / (x * x))) / re;
    }

    @Override
    public List<Note> geometryNotes() {
        return List.of();
    }

    @Override
    public List<Note> flowNotes(double reynolds) {
        return COVERED_RE.contains(reynolds)
                ? List.of()
                : List.of(new Note(
                        "finReynolds",
                        reynolds,
                        COVERED_RE,
                        Note.Action.WIDENED,
                        1.5,
                        NoteText.PLAIN_FINS_NOT_LAMINAR.with()));
    }

    @Override
    public double colburnSpread() {
        return 0.25;
    }

    @Override
    public double frictionSpread() {
        return 0.15;
    }

    @Override
    public String colburnSource() {
        return "developing laminar flow between plates, form of Hausen, from memory";
    }

    @Override
    public String frictionSource() {
        return "Shah and London, Laminar Flow Forced Convection in Ducts, 1978, from memory";
    }
}
