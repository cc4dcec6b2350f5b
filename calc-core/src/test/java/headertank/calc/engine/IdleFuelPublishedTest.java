package headertank.calc.engine;

import static headertank.calc.published.Check.check;

import headertank.calc.fluid.Fuel;
import headertank.calc.published.Check;
import headertank.calc.published.PublishedTestBase;
import java.util.List;
import java.util.Locale;

/**
 * What warm engines burn at idle with no accessories switched on, against what a laboratory measured on three cars. Rated power, speeds and
 * cylinders are guessed for such engines; 20 A through the alternator and 150 W of belt, as in the workshop, drive them.
 */
public class IdleFuelPublishedTest extends PublishedTestBase {

    private static final String MEASURED =
            "US Department of Energy, Vehicle Technologies Office, Fact 861, 23 February 2015: passenger cars measured by Argonne"
                    + " National Laboratory, idle without load";

    /** Lower heating values of petrol with tenth ethanol and of diesel: US DOE Alternative Fuels Data Center, 112114 and 128488 Btu/gal. */
    private static final double E10_J_PER_GALLON = 112_114 * 1055.06;

    private static final double DIESEL_J_PER_GALLON = 128_488 * 1055.06;

    private static final double NOTHING_ON_W = 20 * 13.5 / 0.55 + 150;

    public IdleFuelPublishedTest() {}

    @Override
    public String subject() {
        return "Fuel at idle";
    }

    @Override
    public List<Check> checks() {
        return List.of(
                row(EngineClass.PETROL_NATURAL, Fuel.PETROL_E10, 2.0e-3, 4, 105e3, 6000, 700)
                        .published(0.16 * E10_J_PER_GALLON / 3600 / 1000)
                        .within(
                                0.35,
                                "does not agree well: by the litre this car burns a fifth less than the logged one below, and ours lies above"
                                        + " both; printed 0.16 gal/h; power, speeds and electric load guessed")
                        .source(MEASURED),
                row(EngineClass.PETROL_NATURAL, Fuel.PETROL_E10, 4.6e-3, 8, 170e3, 5000, 650)
                        .published(0.39 * E10_J_PER_GALLON / 3600 / 1000)
                        .within(0.20, "printed 0.39 gal/h, two digits; power, speeds and electric load guessed")
                        .source(MEASURED),
                row(EngineClass.DIESEL_TURBO, Fuel.DIESEL, 2.0e-3, 4, 103e3, 4000, 800)
                        .published(0.17 * DIESEL_J_PER_GALLON / 3600 / 1000)
                        .within(
                                0.35,
                                "does not agree well: ours rubs too little for a diesel at idle; printed 0.17 gal/h; power, speeds and"
                                        + " electric load guessed")
                        .source(MEASURED));
    }

    private static Check.Draft row(
            EngineClass kind,
            Fuel fuel,
            double displacementM3,
            int cylinders,
            double powerW,
            double ratedPerMinute,
            double idlePerMinute) {
        EngineHeat engine = new EngineHeat(
                EngineSpec.of(kind, displacementM3, cylinders, powerW, ratedPerMinute / 60, idlePerMinute / 60, fuel),
                EngineFactors.NOMINAL);
        return check(
                        "fuel power, warm, nothing switched on",
                        String.format(
                                Locale.ROOT,
                                "%s, %.1f l; guessed: %.0f kW at %.0f 1/min, idle %.0f 1/min, 20 A",
                                kind.isDiesel() ? "diesel" : "petrol",
                                1000 * displacementM3,
                                powerW / 1000,
                                ratedPerMinute,
                                idlePerMinute),
                        "kW")
                .ours(() -> engine.at(NOTHING_ON_W, idlePerMinute / 60).fuelW() / 1000);
    }
}
