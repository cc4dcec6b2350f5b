package headertank.calc.coreclass;

/** The figures of a core that a class of core states and a caliper can replace. */
public enum CoreFigure {
    /** Depth of the core along the air's way [m]. */
    DEPTH_M,
    /** Outside height of a tube across the face [m]. */
    TUBE_HEIGHT_M,
    /** Wall of a tube [m]. */
    TUBE_WALL_M,
    /** Height of a fin from tube to tube [m]. */
    FIN_HEIGHT_M,
    /** Distance from fin to fin [m]. */
    FIN_PITCH_M,
    /** Thickness of the fin's sheet [m]. */
    FIN_THICKNESS_M,
    /** Pitch of the louvres [m]. */
    LOUVER_PITCH_M,
    /** Angle of the louvres [degrees]. */
    LOUVER_ANGLE_DEG,
    /** Length of a louvre over the height of the fin [-]. */
    LOUVER_SHARE,
    /** Resistance of the joint between fin and tube, on the fins' feet [m2K/W]. */
    BOND_RESISTANCE_M2K_PER_W,
    /** Resistance of deposits inside the tubes [m2K/W]. */
    COOLANT_FOULING_M2K_PER_W
}
