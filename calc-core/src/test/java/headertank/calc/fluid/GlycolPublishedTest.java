package headertank.calc.fluid;

import static headertank.calc.published.Check.check;

import headertank.calc.published.Check;
import headertank.calc.published.PublishedTestBase;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

public class GlycolPublishedTest extends PublishedTestBase {

    private static final String ASHRAE =
            "ASHRAE Handbook, Fundamentals, 2001, secondary coolants (digitised in CoolProp)";
    private static final String MELINDER =
            "A. Melinder, IIR 2010, coefficients stored in CoolProp, evaluated independently";

    @Override
    public String subject() {
        return "Glycol mixtures";
    }

    @Override
    public List<Check> checks() {
        List<Check> rows = new ArrayList<>();
        addTable(rows, GlycolKind.ETHYLENE, "ashrae-ethylene.csv");
        addTable(rows, GlycolKind.PROPYLENE, "ashrae-propylene.csv");
        for (Figures.Row r : Figures.read(getClass(), "ashrae-freezing.csv")) {
            double x = r.number("mass_fraction");
            if (Set.of(0.2, 0.34, 0.5, 0.6).contains(x)) {
                GlycolKind kind = kind(r);
                rows.add(check("freezing temperature", name(kind) + ", x " + x, "K")
                        .ours(() -> new AshraeCoolant(kind, x).freezingK())
                        .published(r.number("freezing_temperature_K"))
                        .withinAbsolute(0.5, "the table's own scatter; our fit is within 0.26 K of it")
                        .fitOfTable(ASHRAE));
            }
        }
        for (Figures.Row r : Figures.read(getClass(), "melinder-points.csv")) {
            GlycolKind kind = r.text("fluid").equals("MEG") ? GlycolKind.ETHYLENE : GlycolKind.PROPYLENE;
            double x = r.number("mass_fraction");
            double t = r.number("temperature_K");
            Coolant c = new MelinderCoolant(kind, x);
            String at = name(kind) + " (Melinder), x " + x + ", " + t + " K";
            String why = "same polynomials";
            rows.add(check("density", at, "kg/m3")
                    .ours(() -> c.densityKgPerM3(t))
                    .published(r.number("density_kg_m3"))
                    .within(1e-9, why)
                    .secondEvaluation(MELINDER));
            rows.add(check("heat capacity", at, "J/kgK")
                    .ours(() -> c.heatCapacityJPerKgK(t))
                    .published(r.number("specific_heat_J_kgK"))
                    .within(1e-9, why)
                    .secondEvaluation(MELINDER));
            rows.add(check("viscosity", at, "Pa s")
                    .ours(() -> c.viscosityPaS(t))
                    .published(r.number("viscosity_Pas"))
                    .within(1e-9, why)
                    .secondEvaluation(MELINDER));
            rows.add(check("conductivity", at, "W/mK")
                    .ours(() -> c.conductivityWPerMK(t))
                    .published(r.number("conductivity_W_mK"))
                    .within(1e-9, why)
                    .secondEvaluation(MELINDER));
            rows.add(check("freezing temperature", at, "K")
                    .ours(c::freezingK)
                    .published(r.number("freezing_temperature_K"))
                    .within(1e-9, why)
                    .secondEvaluation(MELINDER));
        }
        double[][] boiling = {{470.45, 0}, {461.35, 1}};
        for (double[] b : boiling) {
            GlycolKind kind = b[1] == 0 ? GlycolKind.ETHYLENE : GlycolKind.PROPYLENE;
            rows.add(check("vapour pressure of pure glycol", name(kind) + ", normal boiling point " + b[0] + " K", "Pa")
                    .ours(() -> GlycolMixture.glycolPressurePa(kind, b[0]))
                    .published(101325)
                    .within(0.012, "0.3 K in the boiling point")
                    .source("normal boiling points 197.3 and 188.2 C, from memory"));
        }
        return rows;
    }

    private void addTable(List<Check> rows, GlycolKind kind, String file) {
        for (Figures.Row r : Figures.read(getClass(), file)) {
            double t = r.number("temperature_K");
            double v = r.number("volume_fraction");
            if (!Set.of(293.15, 353.15, 363.15, 373.15).contains(t)
                    || !Set.of(0.1, 0.3, 0.5).contains(v)) {
                continue;
            }
            double x = r.number("mass_fraction");
            Coolant c = Coolant.of(kind, x);
            String at = name(kind) + ", x " + x + ", " + t + " K";
            rows.add(check("density", at, "kg/m3")
                    .ours(() -> c.densityKgPerM3(t))
                    .published(r.number("density_kg_m3"))
                    .within(1e-4, "fit of the table")
                    .fitOfTable(ASHRAE));
            rows.add(check("heat capacity", at, "J/kgK")
                    .ours(() -> c.heatCapacityJPerKgK(t))
                    .published(r.number("specific_heat_J_kgK"))
                    .within(5e-4, "fit of the table")
                    .fitOfTable(ASHRAE));
            rows.add(check("viscosity", at, "Pa s")
                    .ours(() -> c.viscosityPaS(t))
                    .published(r.number("viscosity_Pas"))
                    .within(0.03, "the table rounds to 1e-5 Pa s; fit")
                    .fitOfTable(ASHRAE));
            rows.add(check("conductivity", at, "W/mK")
                    .ours(() -> c.conductivityWPerMK(t))
                    .published(r.number("conductivity_W_mK"))
                    .within(3e-3, "the table rounds to 1e-3 W/mK; fit")
                    .fitOfTable(ASHRAE));
        }
    }

    static GlycolKind kind(Figures.Row r) {
        return r.text("fluid").startsWith("ethylene") ? GlycolKind.ETHYLENE : GlycolKind.PROPYLENE;
    }

    private static String name(GlycolKind kind) {
        return kind == GlycolKind.ETHYLENE ? "ethylene glycol" : "propylene glycol";
    }
}
