package headertank.calc.fluid;

import static headertank.calc.published.Check.check;

import headertank.calc.published.Check;
import headertank.calc.published.PublishedTestBase;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Fuel figures against the ranges that public tables give. */
public class FuelPublishedTest extends PublishedTestBase {

    private static final String TABLE = "US DOE Alternative Fuels Data Center, Properties of Fuels";
    private static final String PETROL = TABLE + "; ranges of air-fuel ratio and latent heat from memory";
    private static final String BLEND = "blended by volume from the pure fuels of: " + TABLE;
    private static final String ALCOHOL = TABLE + "; air-fuel ratio from the reaction equation; ranges from memory";

    @Override
    public String subject() {
        return "Fuels";
    }

    @Override
    public List<Check> checks() {
        List<Check> all = new ArrayList<>();
        fuel(all, Fuel.PETROL_E0, 41868000, 44194000, 14.5, 14.8, 305000, 380000, PETROL);
        fuel(all, Fuel.PETROL_E10, 41000000, 42400000, 13.9, 14.2, 360000, 440000, BLEND);
        fuel(all, Fuel.E85, 28600000, 31685314.18, 9.6, 10.63760099, 756704.9932, 900000, BLEND);
        fuel(all, Fuel.ETHANOL, 26700000, 27000000, 8.95, 9.05, 840000, 925000, ALCOHOL);
        fuel(all, Fuel.METHANOL, 19900000, 20100000, 6.43, 6.5, 1100000, 1185000, ALCOHOL);
        fuel(all, Fuel.DIESEL, 41868000, 44194000, 14.4, 14.7, 230000, 270000, PETROL);
        return all;
    }

    private static void fuel(
            List<Check> all,
            Fuel fuel,
            double heatMin,
            double heatMax,
            double airMin,
            double airMax,
            double latentMin,
            double latentMax,
            String source) {
        range(all, fuel, "lower heating value", "J/kg", Fuel::lowerHeatingValueJPerKg, heatMin, heatMax, source);
        range(
                all,
                fuel,
                "stoichiometric air-fuel ratio",
                "-",
                Fuel::stoichiometricAirFuelRatio,
                airMin,
                airMax,
                source);
        range(all, fuel, "latent heat", "J/kg", Fuel::latentHeatJPerKg, latentMin, latentMax, source);
    }

    private static void range(
            List<Check> all,
            Fuel fuel,
            String quantity,
            String unit,
            ToDoubleFunction<Fuel> ours,
            double min,
            double max,
            String source) {
        all.add(check(quantity, fuel.name(), unit)
                .ours(() -> ours.applyAsDouble(fuel))
                .published((min + max) / 2)
                .withinAbsolute((max - min) / 2, "published as a range; its middle and half width")
                .secondEvaluation(source));
    }
}
