package headertank.calc.coolant;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.util.FastMath;

/**
 * Boiling of ethylene glycol and water by Raoult's law, for tests of this package only. Water: IAPWS R7-97(2012), eq. 30;
 * glycol: Antoine constants from memory.
 */
record Mixture(double glycolMassFraction) {

    double saturationPa(double temperatureK) {
        double water = (1 - glycolMassFraction) / 18.015;
        double glycol = glycolMassFraction / 62.068;
        double share = water / (water + glycol);
        double glycolPa = 133.322 * FastMath.pow(10, 8.0908 - 2088.9 / (temperatureK - 273.15 + 203.5));
        return share * waterPa(temperatureK) + (1 - share) * glycolPa;
    }

    double boilingK(double pressurePa) {
        double low = 273.15;
        double high = 533.15;
        for (int i = 0; i < 80; i++) {
            double mid = 0.5 * (low + high);
            if (saturationPa(mid) < pressurePa) {
                low = mid;
            } else {
                high = mid;
            }
        }
        return low;
    }

    DoubleUnaryOperator boiling() {
        return this::boilingK;
    }

    static double waterPa(double temperatureK) {
        double t = temperatureK - 0.23855557567849 / (temperatureK - 650.17534844798);
        double a = t * t + 1167.0521452767 * t - 724213.16703206;
        double b = -17.073846940092 * t * t + 12020.82470247 * t - 3232555.0322333;
        double c = 14.91510861353 * t * t - 4823.2657361591 * t + 405113.40542057;
        return 1e6 * FastMath.pow(2 * c / (-b + FastMath.sqrt(b * b - 4 * a * c)), 4);
    }
}
