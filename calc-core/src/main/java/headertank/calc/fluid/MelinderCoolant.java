package headertank.calc.fluid;

/**
 * Water-glycol mixture by Melinder's polynomials: y = sum c_ij (T - T_b)^i (x - x_b)^j, the viscosity is exp of that
 * sum, the freezing temperature a polynomial in x - x_b alone; x mass fraction of glycol, T in K. Row of a table below:
 * power of T; column: power of x.
 *
 * <p>Source: A. Melinder, Properties of Secondary Working Fluids for Indirect Systems, International Institute of
 * Refrigeration, Paris 2010, with the coefficients as stored in the open library CoolProp. Range: x 0 to 0.60, freezing
 * point to 100 C; the tables behind them are said to stop at 40 C, so that at radiator temperatures this is our second
 * source beside {@link AshraeCoolant}. Outside: see {@link GlycolMixture}, from which it takes the extension above 100 C,
 * the bubble point and the notes.
 */
public final class MelinderCoolant extends GlycolMixture {

    private static final double[][] ETHYLENE_DENSITY = {
        {1034.0, 131.1, 0.749, -106.2, -96.23, 489.1},
        {-0.4781, -0.6876, 0.7855, 1.229, -7.211, 0.0},
        {-0.002692, 0.004805, -0.003995, -0.01153, 0.0, 0.0},
        {4.725e-06, 1.69e-06, 4.982e-05, 0.0, 0.0, 0.0}
    };
    private static final double[][] ETHYLENE_HEAT_CAPACITY = {
        {3737.0, -1799.0, -993.3, 2610.0, 1537.0, -16180.0},
        {2.93, 10.46, 3.516, -1.189, -42.72, 0.0},
        {-0.004675, -0.04147, 0.05109, -0.1643, 0.0, 0.0},
        {-1.389e-05, 1.847e-05, -0.0007138, 0.0, 0.0, 0.0}
    };
    private static final double[][] ETHYLENE_CONDUCTIVITY = {
        {0.472, -0.4286, 0.1747, 0.03017, -0.1322, 0.2678},
        {0.0008903, -0.001473, 0.0006814, -0.002412, 0.002555, 0.0},
        {-1.058e-06, 1.059e-05, -3.612e-05, 4.004e-05, 0.0, 0.0},
        {-2.789e-09, -1.142e-08, 2.365e-08, 0.0, 0.0, 0.0}
    };
    private static final double[][] ETHYLENE_LN_VISCOSITY = {
        {-6.437255, 2.471, 0.03328, 1.659, 3.089, -18.65},
        {-0.0255, -0.01171, 0.01086, 0.003157, 0.01831, 0.0},
        {0.0001782, 0.0001052, 0.0001051, 0.0004063, 0.0, 0.0},
        {-7.669e-07, -1.634e-06, -6.475e-06, 0.0, 0.0, 0.0}
    };
    private static final double[] ETHYLENE_FREEZING = {257.9, -80.8, -133.4, -72.93, 100.6, 11.4};
    private static final double[][] PROPYLENE_DENSITY = {
        {1018.0, 76.04, -24.98, -155.0, -113.1, 234.2},
        {-0.5406, -0.945, 0.27, 2.829, -2.221, 0.0},
        {-0.002666, 0.005541, -0.004018, -0.007175, 0.0, 0.0},
        {1.347e-05, -1.343e-05, 3.376e-05, 0.0, 0.0, 0.0}
    };
    private static final double[][] PROPYLENE_HEAT_CAPACITY = {
        {3882.0, -1304.0, -1598.0, 353.9, 5000.0, -4959.0},
        {2.699, 5.07, 0.9534, 31.02, -71.35, 0.0},
        {-0.001659, -0.004752, 0.1167, -0.295, 0.0, 0.0},
        {-1.032e-05, 0.0001522, -0.000487, 0.0, 0.0, 0.0}
    };
    private static final double[][] PROPYLENE_CONDUCTIVITY = {
        {0.4513, -0.4795, 0.2076, -0.09083, -0.05952, 0.2104},
        {0.0007955, -0.001678, 0.001563, -0.002518, -0.003605, 0.0},
        {3.482e-08, 8.941e-06, -4.615e-05, 6.543e-05, 0.0, 0.0},
        {-5.966e-09, 1.493e-08, 9.897e-08, 0.0, 0.0, 0.0}
    };
    private static final double[][] PROPYLENE_LN_VISCOSITY = {
        {-6.224055, 3.328, 0.5453, -3.9, -1.587, 35.64},
        {-0.03045, -0.03984, -0.00086, 0.1054, 0.04475, 0.0},
        {0.0002525, 0.0004332, -0.0001593, -0.001589, 0.0, 0.0},
        {-1.399e-06, -1.86e-06, -4.465e-07, 0.0, 0.0, 0.0}
    };
    private static final double[] PROPYLENE_FREEZING = {259.9, -66.31, -109.4, -228.3, -340.9, 146.5};

    /**
     * @param kind ethylene or propylene glycol
     * @param glycolMassFraction mass fraction of glycol, 0..0.70, above 0.60 clamped [-]
     * @throws headertank.calc.quantity.OutOfRangeException beyond 0..0.70
     */
    public MelinderCoolant(GlycolKind kind, double glycolMassFraction) {
        super(kind, glycolMassFraction, curves(kind, usedFraction(kind, glycolMassFraction)));
    }

    private static Curves curves(GlycolKind kind, double x) {
        boolean ethylene = kind == GlycolKind.ETHYLENE;
        double w = x - (ethylene ? 0.308462 : 0.307031);
        return new Curves(
                ethylene ? 304.878 : 305.8583,
                1.0,
                Polynomial.collapsed(ethylene ? ETHYLENE_DENSITY : PROPYLENE_DENSITY, w),
                Polynomial.collapsed(ethylene ? ETHYLENE_HEAT_CAPACITY : PROPYLENE_HEAT_CAPACITY, w),
                Polynomial.collapsed(ethylene ? ETHYLENE_CONDUCTIVITY : PROPYLENE_CONDUCTIVITY, w),
                Polynomial.collapsed(ethylene ? ETHYLENE_LN_VISCOSITY : PROPYLENE_LN_VISCOSITY, w),
                Polynomial.at(ethylene ? ETHYLENE_FREEZING : PROPYLENE_FREEZING, w),
                0.0);
    }

    @Override
    public String source() {
        return "A. Melinder, Properties of Secondary Working Fluids for Indirect Systems, IIR 2010";
    }

    @Override
    CoolantSpread spreadWithin(double temperatureK) {
        return baseSpread();
    }
}
