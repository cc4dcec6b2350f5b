package headertank.calc.oil;

import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;
import headertank.calc.quantity.WorkedQuantity;
import headertank.calc.quantity.WorkingLine;
import java.util.List;
import org.hipparchus.util.FastMath;

/**
 * Steady oil temperature: T_o = (Q_o + UA_c T_h + UA_a T_a) / (UA_c + UA_a).
 *
 * <p>Q_o heat into the oil [W]; UA_c to coolant, UA_a to air at this state, times what an {@link OilThermostat} leaves open at
 * T_o [W/K]; T_h coolant, T_a ambient [K]. The balance is derived. Limits 130 and 150 deg C, target about 100 deg C: common
 * practice, no source.
 *
 * @param oilK T_o [K]
 * @param toCoolantW heat that the coolant takes from the oil, negative when it warms the oil [W]
 * @param toAirW heat that the air takes [W]
 * @param toAirWPerK UA_a at this state and oil temperature [W/K]
 * @param standing what the temperature means
 */
public record OilBalance(double oilK, double toCoolantW, double toAirW, double toAirWPerK, Standing standing) {

    /** Where a shop wants the oil, about 100 deg C [K]; common practice, no source. */
    public static final double TARGET_K = 373.15;

    /** From here caution, 130 deg C [K]; common practice, no source. */
    public static final double CAUTION_K = 403.15;

    /** From here no-go, 150 deg C [K]; common practice, no source. */
    public static final double NO_GO_K = 423.15;

    private static final Range HEAT = Range.of(0, 1e6);

    /** What an oil temperature means. */
    public enum Standing {
        GO,
        CAUTION,
        NO_GO
    }

    /**
     * @param spec conductances
     * @param heatW Q_o, 0 to 1 MW, outside: typed error [W]
     * @param coolantK T_h [K]
     * @param ambientK T_a [K]
     * @return temperature and heat flows; they sum to {@code heatW}
     */
    public static OilBalance of(OilSpec spec, double heatW, double coolantK, double ambientK) {
        double oil = temperatureK(spec, heatW, coolantK, ambientK);
        double air = spec.toAirWPerK() * spec.thermostat().openShare(oil);
        return new OilBalance(
                oil, spec.toCoolantWPerK() * (oil - coolantK), air * (oil - ambientK), air, standing(oil));
    }

    /** @return T_o alone [K]; parameters as in {@link #of} */
    public static double temperatureK(OilSpec spec, double heatW, double coolantK, double ambientK) {
        OutOfRangeException.require("oil.heatW", heatW, HEAT);
        double coolant = spec.toCoolantWPerK();
        double air = spec.toAirWPerK();
        double warm = heatW + coolant * coolantK;
        OilThermostat t = spec.thermostat();
        double open = (warm + air * ambientK) / (coolant + air);
        if (t.governedShare() == 0 || open >= t.fullOpenK()) {
            return open;
        }
        double least = air * (1 - t.governedShare());
        double shut = (warm + least * ambientK) / (coolant + least);
        return shut <= t.openingK() ? shut : throttledK(warm, coolant, least, air - least, ambientK, t);
    }

    /**
     * The root between opening and full opening of warm - UA_c T = (UA_l + (T - T_1) s)(T - T_a), s = UA_g / (T_2 - T_1): with
     * x = T - T_1, s x^2 + b x - c = 0, b and c from the same terms. Falls steadily from left to right, so one root is in
     * between. Derived.
     */
    private static double throttledK(
            double warm, double coolant, double least, double governed, double ambientK, OilThermostat t) {
        double slope = governed / (t.fullOpenK() - t.openingK());
        double above = t.openingK() - ambientK;
        double b = coolant + least + slope * above;
        double c = warm - coolant * t.openingK() - least * above;
        return t.openingK() + 2 * c / (b + FastMath.sqrt(b * b + 4 * slope * c));
    }

    /** @return heat that the coolant takes from the oil [W]; parameters as in {@link #of} */
    public static double toCoolantW(OilSpec spec, double heatW, double coolantK, double ambientK) {
        return spec.toCoolantWPerK() * (temperatureK(spec, heatW, coolantK, ambientK) - coolantK);
    }

    /** @return what an oil temperature in K means; no number is a no-go */
    public static Standing standing(double oilK) {
        if (oilK < CAUTION_K) {
            return Standing.GO;
        }
        return oilK < NO_GO_K ? Standing.CAUTION : Standing.NO_GO;
    }

    /** @return the working, line by line */
    public List<WorkingLine> working() {
        return List.of(
                new WorkingLine(WorkedQuantity.OIL_TO_AIR_CONDUCTANCE, "UA_oa", "W/K", toAirWPerK, "modelling choice"),
                new WorkingLine(
                        WorkedQuantity.OIL_TEMPERATURE, "T_oil", "K", oilK, "steady balance of the oil, derived"),
                new WorkingLine(WorkedQuantity.OIL_TO_COOLANT_HEAT, "Q_oc", "W", toCoolantW, "derived"),
                new WorkingLine(WorkedQuantity.OIL_TO_AIR_HEAT, "Q_oa", "W", toAirW, "derived"));
    }
}
