package headertank.calc.choice;

/** What a core is made of; conductivities of usual alloys, from memory. */
public enum CoreMaterial {
    /** Brazed aluminium alloys. */
    ALUMINIUM(180, 160),
    /** Copper fins soldered to brass tubes. */
    COPPER_BRASS(377, 110);

    private final double finConductivityWPerMK;
    private final double tubeConductivityWPerMK;

    CoreMaterial(double finConductivityWPerMK, double tubeConductivityWPerMK) {
        this.finConductivityWPerMK = finConductivityWPerMK;
        this.tubeConductivityWPerMK = tubeConductivityWPerMK;
    }

    /** @return conductivity of the fins [W/mK] */
    public double finConductivityWPerMK() {
        return finConductivityWPerMK;
    }

    /** @return conductivity of the tubes [W/mK] */
    public double tubeConductivityWPerMK() {
        return tubeConductivityWPerMK;
    }
}
