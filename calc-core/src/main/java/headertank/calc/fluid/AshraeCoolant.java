package headertank.calc.fluid;

/**
 * Water-glycol mixture after the tables of the ASHRAE Handbook, Fundamentals, 2001, physical properties of secondary
 * coolants (aqueous ethylene and propylene glycol, 10 to 60 % by volume, -30 to 100 C), read from the digitised tables of
 * the open library CoolProp (I. H. Bell et al., Ind. Eng. Chem. Res. 53, 2014, 2498-2508).
 *
 * <p>The tables enter as fits of ours: sum c_ij z^i w^j with z = (T - 323.15 K)/50 K and w = (x - 0.3)/0.3, x mass
 * fraction of glycol; the viscosity is exp of that sum. Row: power of z; column: power of w. Largest difference from the
 * tables over 0 to 100 C: density 2e-5, heat capacity 2.1e-4, conductivity 1.5e-3, viscosity 2.5 % (the tables round the
 * viscosity to 1e-5 Pa s, 1.4 % at 100 C); below 0 C viscosity 5.6 %. Freezing points: fits of degree 5 (ethylene, within
 * 0.26 K of the tables) and 4 (propylene, 0.07 K).
 *
 * <p>Between plain water and the weakest mixture of the tables (x = 0.1117 ethylene, 0.1041 propylene) the coefficients
 * are mixed linearly with those of {@link WaterProperties}. Range: x 0 to 0.60, the larger of the freezing point and
 * -30 C to 100 C. Outside: see {@link GlycolMixture}. The spread is the larger of a fixed one and the difference from
 * {@link MelinderCoolant} at the same composition and temperature.
 */
public final class AshraeCoolant extends GlycolMixture {

    private static final double[][] ETHYLENE_DENSITY = {
        {1028.51651, 41.3916556, -2.33749553, -0.0133013398, -0.065731467},
        {-25.7049464, -4.2144641, -0.388464176, -0.0162552513, 0.0223752504},
        {-6.07942471, 0.0013891541, -0.0051300969, 0.00466934847, 0.0}
    };
    private static final double[][] ETHYLENE_HEAT_CAPACITY = {
        {3766.93807, -449.937328, -62.8726682, 1.26452982, 0.105219895},
        {135.64648, 76.7819629, 0.18295301, -0.0461449449, 0.0}
    };
    private static final double[][] ETHYLENE_CONDUCTIVITY = {
        {0.491762664, -0.135352953, 0.0151184987, -0.000242715799, 0.000654057237},
        {0.0386952471, -0.0188924676, 0.00170669907, 0.000826179852, 0.0},
        {-0.0153693192, 0.00844617679, -0.000760027446, 0.0, 0.0}
    };
    private static final double[][] ETHYLENE_LN_VISCOSITY = {
        {-6.85823733, 0.693146975, -0.0075091812, 0.0977659133, 0.0224824397, -0.114602707},
        {-0.953941742, -0.218373069, 0.069912519, 0.00484757198, -0.15557421, 0.00978375175},
        {0.215296962, -0.0209880827, 0.0293512051, 0.0202647672, 0.0448923772, 0.0},
        {-0.0916135285, -0.0392749466, 0.00364158307, 0.0396893813, 0.0, 0.0},
        {0.0517573426, 0.0438054262, -0.0571834558, 0.0, 0.0, 0.0}
    };
    private static final double[][] PROPYLENE_DENSITY = {
        {1012.25011, 21.491615, -5.27952665, 0.122049238, -0.265716538},
        {-29.7736685, -8.13240096, 0.808541297, -0.0450369551, 0.111877178},
        {-6.38264438, -0.221059497, 0.272177674, -0.0171285009, 0.0}
    };
    private static final double[][] PROPYLENE_HEAT_CAPACITY = {
        {3937.89841, -355.353379, -117.508645, -4.24478299, 10.1688522},
        {135.753383, 85.1666376, 0.313097238, -0.691646115, 0.0}
    };
    private static final double[][] PROPYLENE_CONDUCTIVITY = {
        {0.472090977, -0.154321688, 0.0142279061, -0.00154795385, 0.003099336},
        {0.0317268961, -0.0249173836, 0.00285177061, 3.56738887e-05, 0.0},
        {-0.0150378978, 0.0085624982, -0.000593165711, 0.0, 0.0}
    };
    private static final double[][] PROPYLENE_LN_VISCOSITY = {
        {-6.70220388, 0.888637337, 0.148821661, -0.157577098, -0.110311848, 0.126159824},
        {-1.17326723, -0.503024719, 0.0539775227, 0.374228461, -0.0975334944, -0.277853922},
        {0.415880672, 0.266232535, -0.167644552, -0.116398547, 0.159790949, 0.0},
        {-0.114552618, -0.0539482853, -0.0199684299, 0.0487973222, 0.0, 0.0},
        {0.0226522122, -0.00662434664, 0.00111037723, 0.0, 0.0, 0.0}
    };
    private static final double[] ETHYLENE_FREEZING = {273.15, -14.606789, -232.00604, 833.34474, -1720.5745, 1115.7779
    };
    private static final double[] PROPYLENE_FREEZING = {273.15, -33.394614, 24.928057, -177.93563, -12.282961};

    private static final double BASE_K = 323.15;
    private static final double SCALE_K = 50.0;
    private static final double LOWEST_K = 243.15;

    private final MelinderCoolant second;

    /**
     * @param kind ethylene or propylene glycol
     * @param glycolMassFraction mass fraction of glycol, 0..0.70, above 0.60 clamped [-]
     * @throws headertank.calc.quantity.OutOfRangeException beyond 0..0.70
     */
    public AshraeCoolant(GlycolKind kind, double glycolMassFraction) {
        super(kind, glycolMassFraction, curves(kind, usedFraction(kind, glycolMassFraction)));
        this.second = new MelinderCoolant(kind, glycolMassFraction);
    }

    private static Curves curves(GlycolKind kind, double x) {
        boolean ethylene = kind == GlycolKind.ETHYLENE;
        double weakest = ethylene ? 0.1117 : 0.1041;
        double w = (Math.max(x, weakest) - 0.3) / 0.3;
        double share = Math.min(1.0, x / weakest);
        return new Curves(
                BASE_K,
                SCALE_K,
                mixed(WaterProperties.DENSITY, ethylene ? ETHYLENE_DENSITY : PROPYLENE_DENSITY, w, share),
                mixed(
                        WaterProperties.HEAT_CAPACITY,
                        ethylene ? ETHYLENE_HEAT_CAPACITY : PROPYLENE_HEAT_CAPACITY,
                        w,
                        share),
                mixed(
                        WaterProperties.CONDUCTIVITY,
                        ethylene ? ETHYLENE_CONDUCTIVITY : PROPYLENE_CONDUCTIVITY,
                        w,
                        share),
                mixed(
                        WaterProperties.LN_VISCOSITY,
                        ethylene ? ETHYLENE_LN_VISCOSITY : PROPYLENE_LN_VISCOSITY,
                        w,
                        share),
                Polynomial.at(ethylene ? ETHYLENE_FREEZING : PROPYLENE_FREEZING, x),
                LOWEST_K);
    }

    /** Collapses the table's fit at w and mixes in water's polynomial, which is one in (T - 348.15 K)/75 K. */
    private static double[] mixed(double[] water, double[][] table, double w, double share) {
        double[] mixture = Polynomial.collapsed(table, w);
        return share >= 1
                ? mixture
                : Polynomial.mixed(Polynomial.shifted(water, (BASE_K - 348.15) / 75, SCALE_K / 75), mixture, share);
    }

    @Override
    public String source() {
        return "ASHRAE Handbook, Fundamentals, 2001, secondary coolants; fit of ours";
    }

    @Override
    CoolantSpread spreadWithin(double temperatureK) {
        CoolantSpread base = baseSpread();
        return new CoolantSpread(
                larger(base.densityShare(), second.densityKgPerM3(temperatureK), densityKgPerM3(temperatureK)),
                larger(
                        base.heatCapacityShare(),
                        second.heatCapacityJPerKgK(temperatureK),
                        heatCapacityJPerKgK(temperatureK)),
                larger(base.viscosityShare(), second.viscosityPaS(temperatureK), viscosityPaS(temperatureK)),
                larger(
                        base.conductivityShare(),
                        second.conductivityWPerMK(temperatureK),
                        conductivityWPerMK(temperatureK)),
                base.boilingK());
    }

    private static double larger(double share, double second, double first) {
        return Math.max(share, Math.abs(second / first - 1));
    }
}
