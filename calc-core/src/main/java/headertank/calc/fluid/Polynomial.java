package headertank.calc.fluid;

/** Polynomials with ascending coefficients, as the property functions use them. */
final class Polynomial {

    private Polynomial() {}

    /** @return c0 + c1 z + c2 z^2 + ... by Horner's rule */
    static double at(double[] c, double z) {
        double s = c[c.length - 1];
        for (int i = c.length - 2; i >= 0; i--) {
            s = s * z + c[i];
        }
        return s;
    }

    /** @return the derivative d/dz at z */
    static double slopeAt(double[] c, double z) {
        double s = 0;
        for (int i = c.length - 1; i >= 1; i--) {
            s = s * z + i * c[i];
        }
        return s;
    }

    /** @return the polynomial in z that is left of sum c[i][j] z^i w^j at a fixed w */
    static double[] collapsed(double[][] c, double w) {
        double[] out = new double[c.length];
        for (int i = 0; i < c.length; i++) {
            out[i] = at(c[i], w);
        }
        return out;
    }

    /** @return the polynomial q(z) = c(a + b z) */
    static double[] shifted(double[] c, double a, double b) {
        double[] out = new double[c.length];
        for (int i = c.length - 1; i >= 0; i--) {
            for (int j = out.length - 1; j >= 1; j--) {
                out[j] = out[j] * a + out[j - 1] * b;
            }
            out[0] = out[0] * a + c[i];
        }
        return out;
    }

    /** @return (1 - share) first + share second, coefficient by coefficient */
    static double[] mixed(double[] first, double[] second, double share) {
        double[] out = new double[Math.max(first.length, second.length)];
        for (int i = 0; i < out.length; i++) {
            double f = i < first.length ? first[i] : 0;
            double s = i < second.length ? second[i] : 0;
            out[i] = (1 - share) * f + share * s;
        }
        return out;
    }
}
