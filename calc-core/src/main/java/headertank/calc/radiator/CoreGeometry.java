package headertank.calc.radiator;

import headertank.calc.choice.FinKind;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;

/**
 * A core as a ruler and a caliper find it: flat tubes with corrugated fins between them.
 *
 * @param widthM width of the finned face [m]
 * @param heightM height of the finned face [m]
 * @param tubeWidthM outside width of a tube along the air's way, w_t [m]
 * @param rows rows of tubes one behind the other, N_r
 * @param rowGapM gap between two rows, 0 for one row [m]
 * @param tubeHeightM outside height of a tube across the face, D_m [m]
 * @param tubeWallM wall of a tube, t_w [m]
 * @param finHeightM height of a fin from tube to tube, F_l [m]
 * @param finPitchM distance from fin to fin, F_p [m]
 * @param finThicknessM thickness of the fin's sheet, d [m]
 * @param finKind louvred or plain
 * @param louverPitchM pitch of the louvres, L_p; not used by plain fins [m]
 * @param louverAngleDeg angle of the louvres to the air's way; not used by plain fins [degrees]
 * @param louverLengthM length of a louvre across the fin, L_l; not used by plain fins [m]
 * @param finConductivityWPerMK conductivity of the fin, k_f [W/mK]
 * @param tubeConductivityWPerMK conductivity of the tube, k_w [W/mK]
 * @param bondResistanceM2KPerW resistance of the joint between fin and tube, on the area of the fins' feet [m2K/W]
 * @param coolantFoulingM2KPerW resistance of deposits inside the tubes, on their inner area [m2K/W]
 * @param airFoulingM2KPerW resistance of dirt on the air side, on its area [m2K/W]
 * @param turbulatedTubes whether the tubes are dimpled or carry turbulators
 */
public record CoreGeometry(
        double widthM,
        double heightM,
        double tubeWidthM,
        int rows,
        double rowGapM,
        double tubeHeightM,
        double tubeWallM,
        double finHeightM,
        double finPitchM,
        double finThicknessM,
        FinKind finKind,
        double louverPitchM,
        double louverAngleDeg,
        double louverLengthM,
        double finConductivityWPerMK,
        double tubeConductivityWPerMK,
        double bondResistanceM2KPerW,
        double coolantFoulingM2KPerW,
        double airFoulingM2KPerW,
        boolean turbulatedTubes) {

    /** Width or height of a face [m]. */
    public static final Range FACE_M = Range.of(0.10, 1.50);

    /** Rows of tubes. */
    public static final Range ROWS = Range.of(1, 6);

    private static final Range RESISTANCE = Range.of(0.0, 0.01);

    /** @throws OutOfRangeException when a figure is none that a core can have */
    public CoreGeometry {
        require("coreWidthM", widthM, FACE_M.min(), FACE_M.max());
        require("coreHeightM", heightM, FACE_M.min(), FACE_M.max());
        require("tubeWidthM", tubeWidthM, 0.005, 0.12);
        require("tubeRows", rows, ROWS.min(), ROWS.max());
        require("rowGapM", rowGapM, 0.0, 0.03);
        require("tubeHeightM", tubeHeightM, 0.0008, Math.min(0.02, tubeWidthM));
        require("tubeWallM", tubeWallM, 0.00005, 0.45 * tubeHeightM);
        require("finHeightM", finHeightM, 0.002, 0.03);
        require("finPitchM", finPitchM, 0.0004, 0.01);
        require("finThicknessM", finThicknessM, 0.00002, Math.min(0.0005, 0.4 * finPitchM));
        if (finKind == null) {
            throw new IllegalArgumentException("a core has louvred or plain fins");
        }
        if (finKind == FinKind.LOUVERED) {
            require("louverPitchM", louverPitchM, 0.0003, 0.01);
            require("louverAngleDeg", louverAngleDeg, 1, 60);
            require("louverLengthM", louverLengthM, 0.0005, finHeightM);
        }
        require("finConductivityWPerMK", finConductivityWPerMK, 10, 450);
        require("tubeConductivityWPerMK", tubeConductivityWPerMK, 10, 450);
        require("bondResistanceM2KPerW", bondResistanceM2KPerW, RESISTANCE.min(), RESISTANCE.max());
        require("coolantFoulingM2KPerW", coolantFoulingM2KPerW, RESISTANCE.min(), RESISTANCE.max());
        require("airFoulingM2KPerW", airFoulingM2KPerW, RESISTANCE.min(), RESISTANCE.max());
    }

    private static void require(String field, double value, double min, double max) {
        OutOfRangeException.require(field, value, Range.of(min, max));
    }

    /** @return depth of the core along the air's way, T_d = N_r w_t + (N_r - 1) gap [m] */
    public double depthM() {
        return rows * tubeWidthM + (rows - 1) * rowGapM;
    }

    /** @return area of the finned face [m2] */
    public double faceAreaM2() {
        return widthM * heightM;
    }
}
