package headertank.calc.radiator;

import headertank.calc.choice.FinKind;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;

/**
 * A core as a ruler and a caliper find it: flat tubes with corrugated fins between them.
 *
 * @param face the finned face
 * @param tubes its tubes
 * @param fins the fins between them
 * @param resistances what keeps heat back beside tubes and fins
 */
public record CoreGeometry(Face face, Tubes tubes, Fins fins, Resistances resistances) {

    /** Width or height of a face [m]. */
    public static final Range FACE_M = Range.of(0.10, 1.50);

    /** Rows of tubes. */
    public static final Range ROWS = Range.of(1, 6);

    /** @throws OutOfRangeException when the louvres are longer than the fin is high */
    public CoreGeometry {
        if (fins.kind() == FinKind.LOUVERED) {
            require("louverLengthM", fins.louvers().lengthM(), 0.0005, fins.heightM());
        }
    }

    /**
     * The finned face.
     *
     * @param widthM width [m]
     * @param heightM height [m]
     */
    public record Face(double widthM, double heightM) {

        /** @throws OutOfRangeException when a figure is none that a core can have */
        public Face {
            require("coreWidthM", widthM, FACE_M.min(), FACE_M.max());
            require("coreHeightM", heightM, FACE_M.min(), FACE_M.max());
        }

        /** @return its area [m2] */
        public double areaM2() {
            return widthM * heightM;
        }
    }

    /**
     * Flat tubes.
     *
     * @param widthM outside width of a tube along the air's way, w_t [m]
     * @param heightM outside height of a tube across the face, D_m [m]
     * @param wallM wall of a tube, t_w [m]
     * @param rows rows of tubes one behind the other, N_r
     * @param rowGapM gap between two rows, 0 for one row [m]
     * @param conductivityWPerMK conductivity of the wall, k_w [W/mK]
     * @param turbulated whether the tubes are dimpled or carry turbulators
     */
    public record Tubes(
            double widthM,
            double heightM,
            double wallM,
            int rows,
            double rowGapM,
            double conductivityWPerMK,
            boolean turbulated) {

        /** @throws OutOfRangeException when a figure is none that a core can have */
        public Tubes {
            require("tubeWidthM", widthM, 0.005, 0.12);
            require("tubeRows", rows, ROWS.min(), ROWS.max());
            require("rowGapM", rowGapM, 0.0, 0.03);
            require("tubeHeightM", heightM, 0.0008, Math.min(0.02, widthM));
            require("tubeWallM", wallM, 0.00005, 0.45 * heightM);
            require("tubeConductivityWPerMK", conductivityWPerMK, 10, 450);
        }
    }

    /**
     * Fins between the tubes.
     *
     * @param kind louvred or plain
     * @param heightM height of a fin from tube to tube, F_l [m]
     * @param pitchM distance from fin to fin, F_p [m]
     * @param thicknessM thickness of the fin's sheet, d [m]
     * @param conductivityWPerMK conductivity of the fin, k_f [W/mK]
     * @param louvers its louvres; not used by plain fins
     */
    public record Fins(
            FinKind kind,
            double heightM,
            double pitchM,
            double thicknessM,
            double conductivityWPerMK,
            Louvers louvers) {

        /** @throws OutOfRangeException when a figure is none that a core can have */
        public Fins {
            if (kind == null) {
                throw new IllegalArgumentException("a core has louvred or plain fins");
            }
            require("finHeightM", heightM, 0.002, 0.03);
            require("finPitchM", pitchM, 0.0004, 0.01);
            require("finThicknessM", thicknessM, 0.00002, Math.min(0.0005, 0.4 * pitchM));
            require("finConductivityWPerMK", conductivityWPerMK, 10, 450);
            if (kind == FinKind.LOUVERED) {
                require("louverPitchM", louvers.pitchM(), 0.0003, 0.01);
                require("louverAngleDeg", louvers.angleDeg(), 1, 60);
            }
        }
    }

    /**
     * Louvres of a fin.
     *
     * @param pitchM pitch, L_p [m]
     * @param angleDeg angle to the air's way [degrees]
     * @param lengthM length across the fin, L_l [m]
     */
    public record Louvers(double pitchM, double angleDeg, double lengthM) {}

    /**
     * What keeps heat back beside tubes and fins.
     *
     * @param bondM2KPerW of the joint between fin and tube, on the area of the fins' feet [m2K/W]
     * @param coolantFoulingM2KPerW of deposits inside the tubes, on their inner area [m2K/W]
     * @param airFoulingM2KPerW of dirt on the air side, on its area [m2K/W]
     */
    public record Resistances(double bondM2KPerW, double coolantFoulingM2KPerW, double airFoulingM2KPerW) {

        private static final Range ALLOWED = Range.of(0.0, 0.01);

        /** @throws OutOfRangeException when a figure is none that a core can have */
        public Resistances {
            OutOfRangeException.require("bondResistanceM2KPerW", bondM2KPerW, ALLOWED);
            OutOfRangeException.require("coolantFoulingM2KPerW", coolantFoulingM2KPerW, ALLOWED);
            OutOfRangeException.require("airFoulingM2KPerW", airFoulingM2KPerW, ALLOWED);
        }
    }

    private static void require(String field, double value, double min, double max) {
        OutOfRangeException.require(field, value, min, max);
    }

    /** @return depth of the core along the air's way, T_d = N_r w_t + (N_r - 1) gap [m] */
    public double depthM() {
        return tubes.rows() * tubes.widthM() + (tubes.rows() - 1) * tubes.rowGapM();
    }
}
