package headertank.calc.radiator;

import static headertank.calc.published.Check.check;

import headertank.calc.fluid.Figures;
import headertank.calc.published.Check;
import headertank.calc.published.PublishedTestBase;
import java.util.ArrayList;
import java.util.List;

public class LouveredFinsPublishedTest extends PublishedTestBase {

    @Override
    public String subject() {
        return "Louvred fins";
    }

    @Override
    public List<Check> checks() {
        List<Check> rows = new ArrayList<>();
        for (Figures.Row r : Figures.read(getClass(), "louvered-fin.csv")) {
            double re = r.number("reynolds_louver_pitch");
            LouveredFins fins = fins(r);
            String at = "geometry " + r.text("geometry") + ", Re " + re;
            rows.add(check("Colburn factor j", at, "-")
                    .ours(() -> fins.colburn(re))
                    .published(r.number("j_1997"))
                    .within(1e-8, "same formula")
                    .secondEvaluation(
                            "Chang and Wang, Int. J. Heat Mass Transfer 40 (1997) 533-544, evaluated independently"));
            rows.add(check("Fanning friction factor f", at, "-")
                    .ours(() -> fins.friction(re))
                    .published(r.number("f_2006_blend_130_230"))
                    .within(1e-8, "same formula")
                    .secondEvaluation(
                            "Chang et al., Int. J. Heat Mass Transfer 43 (2000) 2237-2243 and 49 (2006) 4250-4253,"
                                    + " evaluated independently"));
        }
        return rows;
    }

    static LouveredFins fins(Figures.Row r) {
        return new LouveredFins(
                r.number("fin_pitch_m"),
                r.number("fin_length_m"),
                r.number("tube_depth_m"),
                r.number("louver_pitch_m"),
                r.number("louver_angle_deg"),
                r.number("louver_length_m"),
                r.number("fin_thickness_m"),
                r.number("tube_major_m"),
                r.number("hydraulic_diameter_m"));
    }
}
