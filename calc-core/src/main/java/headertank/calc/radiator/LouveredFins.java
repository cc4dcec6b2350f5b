package headertank.calc.radiator;

import headertank.calc.quantity.Note;
import headertank.calc.quantity.NoteText;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.util.FastMath;

/**
 * Heat transfer and friction of louvred fins; Re on louvre pitch and the velocity in the smallest free area.
 *
 * <p>j = Re^-0.49 (th/90)^0.27 (F_p/L_p)^-0.14 (F_l/L_p)^-0.29 (T_d/L_p)^-0.23 (L_l/L_p)^0.68 (T_p/L_p)^-0.28
 * (d/L_p)^-0.05: Y.-J. Chang, C.-C. Wang, A generalized heat transfer correlation for louver fin geometry, Int. J. Heat
 * Mass Transfer 40 (1997) 533-544.
 *
 * <p>Fanning friction f = f1 f2 f3: Y.-J. Chang, K.-C. Hsu, Y.-T. Lin, C.-C. Wang, A generalized friction correlation
 * for louver fin geometry, same journal 43 (2000) 2237-2243. Below Re 130:
 * f1 = 14.39 Re^(-0.805 F_p/F_l) ln(1 + F_p/L_p)^3.04, f2 = ln((d/F_p)^0.48 + 0.9)^-1.435 (D_h/L_p)^-3.01
 * ln(0.5 Re)^-3.01, f3 = (F_p/L_l)^-0.308 (T_d/L_l)^-0.308 exp(-0.1167 T_p/D_m) th^0.35; above Re 230:
 * f1 = 4.97 Re^(0.6049 - 1.064/th^0.2) ln((d/F_p)^0.5 + 0.9)^-0.527, f2 = [(D_h/L_p) ln(0.3 Re)]^-2.966
 * (F_p/L_l)^(-0.7931 T_p/T_h), f3 = (T_p/D_m)^-0.0446 ln(1.2 + (L_p/F_p)^1.4)^-3.553 th^-0.477, T_h = T_p - D_m. Between
 * them f = sqrt(((1 + w) f(130)^2 + (1 - w) f(230)^2)/2), w = 3.6 - 0.02 Re: Y.-J. Chang, W.-J. Chang, M.-C. Li,
 * C.-C. Wang, same journal 49 (2006) 4250-4253. The papers were not seen; the equations were, in several public codes.
 *
 * <p>Symbols: th louvre angle [degrees], F_p fin pitch, L_p louvre pitch, F_l fin height, T_d core depth, L_l louvre
 * length, T_p tube pitch, d fin thickness, D_m tube height, D_h hydraulic diameter of the finned passage [m].
 *
 * <p>Range: Re 100 to 3000 and the geometries of {@link #geometryNotes()}. Re is clamped to 60 to 4000. A geometry up to
 * 20 % outside is computed with a note and a wider spread; further out the constructor refuses. Of the measured data 89 %
 * (j) and 83 % (f) are said to lie within 15 % (from memory); one standard deviation: j 8 %, f 12 %.
 */
public final class LouveredFins implements AirSide {

    /** Depths T_d of the cores that the correlation was made from [m]. */
    public static final Range COVERED_DEPTH_M = Range.of(0.0156, 0.050);

    /**
     * Depths that are rated as they are, with a wider uncertainty outside {@link #COVERED_DEPTH_M} [m]: the 20 % that this class
     * accepts beyond it, less a little, so that rounding leads no core out; modelling choice.
     */
    public static final Range RATED_DEPTH_M = Range.of(0.0126, 0.0595);

    private static final Range COVERED_RE = Range.of(100, 3000);
    private static final Range USED_RE = Range.of(60, 4000);
    private static final double LOW_RE = 130;
    private static final double HIGH_RE = 230;
    private static final double LN_HALF = FastMath.log(0.5);
    private static final double LN_THREE_TENTHS = FastMath.log(0.3);

    private final double louverPitchM;
    private final double colburnAtOne;
    private final double lowFactor;
    private final double lowExponent;
    private final double highFactor;
    private final double highExponent;
    private final double squareAt130;
    private final double squareAt230;
    private final List<Note> geometryNotes;

    /**
     * @param finPitchM F_p [m]
     * @param finHeightM F_l [m]
     * @param depthM T_d [m]
     * @param louverPitchM L_p [m]
     * @param louverAngleDeg th [degrees]
     * @param louverLengthM L_l [m]
     * @param finThicknessM d [m]
     * @param tubeHeightM D_m [m]
     * @param hydraulicDiameterM D_h [m]
     * @throws OutOfRangeException when a figure lies more than 20 % outside the correlation's range
     */
    public LouveredFins(
            double finPitchM,
            double finHeightM,
            double depthM,
            double louverPitchM,
            double louverAngleDeg,
            double louverLengthM,
            double finThicknessM,
            double tubeHeightM,
            double hydraulicDiameterM) {
        this.louverPitchM = louverPitchM;
        List<Note> notes = new ArrayList<>();
        judge(notes, "louverPitchM", louverPitchM, 0.0005, 0.003, 0.0005, 0.003);
        judge(notes, "louverAngleDeg", louverAngleDeg, 8.43, 35, 8.43, 35);
        judge(notes, "finPitchM", finPitchM, 0.00051, 0.00333, 0.00051, 0.00333);
        judge(notes, "coreDepthM", depthM, COVERED_DEPTH_M.min(), COVERED_DEPTH_M.max(), 0.0156, 0.0574);
        judge(notes, "finHeightM", finHeightM, 0.006, 0.020, 0.00284, 0.020);
        judge(notes, "louverLengthM", louverLengthM, 0.00094, 0.0185, 0.00094, 0.0185);
        judge(notes, "finThicknessM", finThicknessM, 0.00004, 0.00016, 0.00004, 0.00016);
        this.geometryNotes = List.copyOf(notes);

        double tubePitchM = finHeightM + tubeHeightM;
        this.colburnAtOne = FastMath.pow(louverAngleDeg / 90, 0.27)
                * FastMath.pow(finPitchM / louverPitchM, -0.14)
                * FastMath.pow(finHeightM / louverPitchM, -0.29)
                * FastMath.pow(depthM / louverPitchM, -0.23)
                * FastMath.pow(louverLengthM / louverPitchM, 0.68)
                * FastMath.pow(tubePitchM / louverPitchM, -0.28)
                * FastMath.pow(finThicknessM / louverPitchM, -0.05);
        this.lowExponent = -0.805 * finPitchM / finHeightM;
        this.lowFactor = 14.39
                * FastMath.pow(FastMath.log(1 + finPitchM / louverPitchM), 3.04)
                * FastMath.pow(FastMath.log(FastMath.pow(finThicknessM / finPitchM, 0.48) + 0.9), -1.435)
                * FastMath.pow(hydraulicDiameterM / louverPitchM, -3.01)
                * FastMath.pow(finPitchM / louverLengthM, -0.308)
                * FastMath.pow(depthM / louverLengthM, -0.308)
                * FastMath.exp(-0.1167 * tubePitchM / tubeHeightM)
                * FastMath.pow(louverAngleDeg, 0.35);
        this.highExponent = 0.6049 - 1.064 / FastMath.pow(louverAngleDeg, 0.2);
        this.highFactor = 4.97
                * FastMath.pow(FastMath.log(FastMath.pow(finThicknessM / finPitchM, 0.5) + 0.9), -0.527)
                * FastMath.pow(hydraulicDiameterM / louverPitchM, -2.966)
                * FastMath.pow(finPitchM / louverLengthM, -0.7931 * tubePitchM / finHeightM)
                * FastMath.pow(tubePitchM / tubeHeightM, -0.0446)
                * FastMath.pow(FastMath.log(1.2 + FastMath.pow(louverPitchM / finPitchM, 1.4)), -3.553)
                * FastMath.pow(louverAngleDeg, -0.477);
        double f130 = low(LOW_RE);
        double f230 = high(HIGH_RE);
        this.squareAt130 = f130 * f130;
        this.squareAt230 = f230 * f230;
    }

    /** Notes or refuses a figure: inside, inside the range remembered of the paper, up to 20 % outside, beyond. */
    private static void judge(
            List<Note> notes,
            String field,
            double value,
            double min,
            double max,
            double rememberedMin,
            double rememberedMax) {
        OutOfRangeException.require(
                field, value, Range.of(Math.min(0.8 * min, rememberedMin), Math.max(1.2 * max, rememberedMax)));
        Range covered = Range.of(min, max);
        if (!covered.contains(value)) {
            boolean remembered = Range.of(rememberedMin, rememberedMax).contains(value);
            notes.add(new Note(
                    field,
                    value,
                    covered,
                    Note.Action.WIDENED,
                    remembered ? 1.25 : 1.5,
                    NoteText.LOUVRES_OF_ANOTHER_GEOMETRY.with()));
        }
    }

    @Override
    public double reynoldsLengthM() {
        return louverPitchM;
    }

    /** @return Colburn factor j at a Reynolds number, clamped to 60 to 4000 [-] */
    public double colburn(double reynolds) {
        return colburnAtOne * FastMath.exp(-0.49 * FastMath.log(USED_RE.clamp(reynolds)));
    }

    @Override
    public double colburn(double reynolds, double prandtl) {
        return colburn(reynolds);
    }

    @Override
    public double friction(double reynolds) {
        double re = USED_RE.clamp(reynolds);
        if (re <= LOW_RE) {
            return low(re);
        }
        if (re >= HIGH_RE) {
            return high(re);
        }
        double w = 3.6 - 0.02 * re;
        return FastMath.sqrt(0.5 * ((1 + w) * squareAt130 + (1 - w) * squareAt230));
    }

    private double low(double re) {
        double ln = FastMath.log(re);
        return lowFactor * FastMath.exp(lowExponent * ln - 3.01 * FastMath.log(ln + LN_HALF));
    }

    private double high(double re) {
        double ln = FastMath.log(re);
        return highFactor * FastMath.exp(highExponent * ln - 2.966 * FastMath.log(ln + LN_THREE_TENTHS));
    }

    @Override
    public List<Note> geometryNotes() {
        return geometryNotes;
    }

    @Override
    public List<Note> flowNotes(double reynolds) {
        if (COVERED_RE.contains(reynolds)) {
            return List.of();
        }
        boolean used = USED_RE.contains(reynolds);
        return List.of(new Note(
                "louverReynolds",
                reynolds,
                COVERED_RE,
                used ? Note.Action.WIDENED : Note.Action.CLAMPED,
                used ? 1.25 : 1.5,
                NoteText.LOUVRE_AIR_BEYOND_MEASURED.with()));
    }

    @Override
    public double colburnSpread() {
        return 0.08;
    }

    @Override
    public double frictionSpread() {
        return 0.12;
    }

    @Override
    public String colburnSource() {
        return "Chang and Wang, Int. J. Heat Mass Transfer 40 (1997) 533-544";
    }

    @Override
    public String frictionSource() {
        return "Chang et al., Int. J. Heat Mass Transfer 43 (2000) 2237-2243 and 49 (2006) 4250-4253";
    }
}
