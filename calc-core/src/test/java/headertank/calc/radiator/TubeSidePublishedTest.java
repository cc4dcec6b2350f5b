package headertank.calc.radiator;

import static headertank.calc.published.Check.check;

import headertank.calc.fluid.Figures;
import headertank.calc.published.Check;
import headertank.calc.published.PublishedTestBase;
import java.util.ArrayList;
import java.util.List;

public class TubeSidePublishedTest extends PublishedTestBase {

    private static final String GNIELINSKI =
            "V. Gnielinski, Int. Chem. Eng. 16 (1976) 359-368 with B. S. Petukhov 1970, evaluated independently and by ht 1.0.7";
    private static final String SHAH_LONDON =
            "R. K. Shah, A. L. London, Laminar Flow Forced Convection in Ducts, 1978, evaluated independently";

    @Override
    public String subject() {
        return "Tube side";
    }

    @Override
    public List<Check> checks() {
        List<Check> rows = new ArrayList<>();
        for (Figures.Row r : Figures.read(getClass(), "tube-side.csv")) {
            double re = r.number("reynolds");
            double pr = r.number("prandtl");
            double a = r.number("aspect_ratio");
            double nu = r.number("nusselt");
            switch (r.text("case")) {
                case "turbulent_gnielinski" -> {
                    if (pr == 2 || pr == 10) {
                        rows.add(check("Nusselt number, turbulent", "Re " + re + ", Pr " + pr, "-")
                                .ours(() -> TubeFlow.gnielinski(re, pr))
                                .published(nu)
                                .within(1e-9, "same formula")
                                .secondEvaluation(GNIELINSKI));
                    }
                    if (pr == 5) {
                        rows.add(check("Darcy friction factor, turbulent", "Re " + re, "-")
                                .ours(() -> TubeFlow.petukhov(re))
                                .published(r.number("friction_darcy"))
                                .within(1e-9, "same formula")
                                .secondEvaluation(GNIELINSKI));
                    }
                }
                case "laminar_rectangular_T" -> {
                    String at = "sides " + a + " : 1";
                    rows.add(check("Nusselt number, laminar, uniform wall temperature", at, "-")
                            .ours(() -> TubeFlow.laminarNusselt(a))
                            .published(nu)
                            .within(1e-9, "same polynomial")
                            .secondEvaluation(SHAH_LONDON));
                    rows.add(check("Nusselt number, laminar, uniform wall temperature", at, "-")
                            .ours(() -> TubeFlow.laminarNusselt(a))
                            .published(r.number("nusselt_exact"))
                            .within(3e-3, "the polynomial against an eigenvalue solution")
                            .secondEvaluation("independent eigenvalue solution"));
                    rows.add(check("Fanning f Re, laminar", at, "-")
                            .ours(() -> TubeFlow.laminarFRe(a))
                            .published(r.number("f_re_fanning"))
                            .within(1e-9, "same polynomial")
                            .secondEvaluation(SHAH_LONDON));
                    rows.add(check("Fanning f Re, laminar", at, "-")
                            .ours(() -> TubeFlow.laminarFRe(a))
                            .published(r.number("f_re_fanning_exact"))
                            .within(1e-3, "the polynomial against a double sine series")
                            .secondEvaluation("independent series solution"));
                }
                case "laminar_parallel_plates_T" -> {
                    rows.add(check("Nusselt number, parallel plates", "uniform wall temperature", "-")
                            .ours(() -> TubeFlow.laminarNusselt(0))
                            .published(r.number("nusselt_exact"))
                            .within(1e-4, "the polynomial is rounded")
                            .secondEvaluation("exact value, from memory"));
                    rows.add(check("Fanning f Re, parallel plates", "-", "-")
                            .ours(() -> TubeFlow.laminarFRe(0))
                            .published(24)
                            .within(1e-12, "exact")
                            .secondEvaluation("exact value"));
                }
                default -> {
                    // Round tubes have no counterpart in flat ones; uniform flux has none in a radiator.
                }
            }
        }
        rows.add(
                check("Nusselt number, water in a tube", "Re 14050, Pr 4.85", "-")
                        .ours(() -> TubeFlow.gnielinski(14050, 4.85))
                        .published(90)
                        .within(0.05, "the book uses Dittus and Boelter; the two correlations differ by 4 % here")
                        .source(
                                "F. P. Incropera, D. P. DeWitt, Fundamentals of Heat and Mass Transfer, example 11.1, from memory"));
        return rows;
    }
}
