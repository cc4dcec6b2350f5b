package headertank.calc.fluid;

import static headertank.calc.published.Check.check;

import headertank.calc.published.Check;
import headertank.calc.published.PublishedTestBase;
import java.util.ArrayList;
import java.util.List;

public class AirPublishedTest extends PublishedTestBase {

    private static final String ISO = "ISO 2533:1975, Standard Atmosphere, formulas";

    @Override
    public String subject() {
        return "Air and atmosphere";
    }

    @Override
    public List<Check> checks() {
        List<Check> rows = new ArrayList<>();
        for (Figures.Row r : Figures.read(getClass(), "atmosphere.csv")) {
            double h = r.number("geopotential_altitude_m");
            if (h % 500 != 0) {
                continue;
            }
            double t = r.number("temperature_K");
            rows.add(check("pressure of the standard atmosphere", h + " m", "Pa")
                    .ours(() -> Atmosphere.pressurePa(h))
                    .published(r.number("pressure_Pa"))
                    .within(1e-6, "same formula")
                    .secondEvaluation(ISO));
            rows.add(check("density of the standard atmosphere", h + " m", "kg/m3")
                    .ours(() -> Air.densityKgPerM3(Atmosphere.pressurePa(h), Atmosphere.temperatureK(h), 0))
                    .published(r.number("density_kg_m3"))
                    .within(1e-6, "same formula")
                    .secondEvaluation(ISO));
            rows.add(check("viscosity of air", t + " K", "Pa s")
                    .ours(() -> Air.viscosityPaS(t))
                    .published(r.number("viscosity_Pas"))
                    .within(1e-6, "same formula")
                    .secondEvaluation(ISO));
            rows.add(check("conductivity of air", t + " K", "W/mK")
                    .ours(() -> Air.conductivityWPerMK(t))
                    .published(r.number("conductivity_W_mK"))
                    .within(1e-6, "same formula")
                    .secondEvaluation(ISO));
        }
        for (Figures.Row r : Figures.read(getClass(), "air-transport.csv")) {
            double t = r.number("temperature_K");
            String source = r.text("origin");
            if (source.startsWith("formulas")) {
                continue;
            }
            rows.add(check("viscosity of air", t + " K", "Pa s")
                    .ours(() -> Air.viscosityPaS(t))
                    .published(r.number("viscosity_Pas"))
                    .within(0.02, "the sources differ by up to 0.8 %")
                    .source(source));
            rows.add(check("conductivity of air", t + " K", "W/mK")
                    .ours(() -> Air.conductivityWPerMK(t))
                    .published(r.number("conductivity_W_mK"))
                    .within(0.02, "the sources differ by up to 1.9 %")
                    .source(source));
            rows.add(check("heat capacity of air", t + " K", "J/kgK")
                    .ours(() -> Air.heatCapacityJPerKgK(t))
                    .published(r.number("specific_heat_J_kgK"))
                    .within(0.003, "the sources differ by up to 0.1 %")
                    .source(source));
            rows.add(check("density of dry air", t + " K, " + r.text("pressure_Pa") + " Pa", "kg/m3")
                    .ours(() -> Air.densityKgPerM3(r.number("pressure_Pa"), t, 0))
                    .published(r.number("density_kg_m3"))
                    .within(2e-3, "real gas and rounding of the table")
                    .source(source));
        }
        return rows;
    }
}
