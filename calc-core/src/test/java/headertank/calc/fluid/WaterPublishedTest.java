package headertank.calc.fluid;

import static headertank.calc.published.Check.check;

import headertank.calc.published.Check;
import headertank.calc.published.PublishedTestBase;
import java.util.ArrayList;
import java.util.List;

public class WaterPublishedTest extends PublishedTestBase {

    private static final String IF97 = "IAPWS R7-97(2012), check tables of equations 30 and 31";
    private static final String COMPUTED = "IAPWS R7-97, R12-08, R15-11, evaluated with the open package iapws 1.5.3";

    @Override
    public String subject() {
        return "Water";
    }

    @Override
    public List<Check> checks() {
        List<Check> rows = new ArrayList<>();
        double[][] saturation = {{300, 3536.58941}, {500, 2638897.76}, {600, 12344314.6}};
        for (double[] s : saturation) {
            rows.add(check("saturation pressure", s[0] + " K", "Pa")
                    .ours(() -> WaterCoolant.WATER.vapourPressurePa(s[0]))
                    .published(s[1])
                    .within(1e-8, "printed to nine digits")
                    .secondEvaluation(IF97));
        }
        double[][] backward = {{372.755919, 0.1e6}, {453.035632, 1e6}, {584.149488, 10e6}};
        for (double[] s : backward) {
            rows.add(check("saturation temperature", s[1] + " Pa", "K")
                    .ours(() -> WaterProperties.saturationTemperatureK(s[1]))
                    .published(s[0])
                    .within(1e-8, "printed to nine digits")
                    .secondEvaluation(IF97));
        }
        rows.add(check("density of liquid", "300 K, 3 MPa (ours at 0.2 MPa)", "kg/m3")
                .ours(() -> WaterCoolant.WATER.densityKgPerM3(300))
                .published(997.8529398)
                .within(1.5e-3, "the state's higher pressure is worth 1.3e-3, our fit 1.5e-4")
                .fitOfTable("IAPWS R7-97(2012), check table of region 1"));
        rows.add(check("heat capacity of liquid", "300 K, 3 MPa (ours at 0.2 MPa)", "J/kgK")
                .ours(() -> WaterCoolant.WATER.heatCapacityJPerKgK(300))
                .published(4173.01218)
                .within(2.5e-3, "the state's higher pressure is worth 1.9e-3, our fit 5.5e-4")
                .fitOfTable("IAPWS R7-97(2012), check table of region 1"));
        rows.add(check("viscosity of liquid", "298.15 K, 998 kg/m3 (ours at 0.2 MPa)", "Pa s")
                .ours(() -> WaterCoolant.WATER.viscosityPaS(298.15))
                .published(0.0008897351)
                .within(5e-3, "fit 2.3e-3; the formulation itself about 1 %")
                .fitOfTable("IAPWS R12-08, check table"));
        rows.add(check("conductivity of liquid", "298.15 K, 998 kg/m3 (ours at 0.2 MPa)", "W/mK")
                .ours(() -> WaterCoolant.WATER.conductivityWPerMK(298.15))
                .published(0.607712868)
                .within(4e-3, "fit 1.1e-3, the state's higher density 2e-3")
                .fitOfTable("IAPWS R15-11, check table without critical term"));
        for (Figures.Row r : Figures.read(WaterPublishedTest.class, "water-liquid.csv")) {
            double t = r.number("temperature_K");
            if (r.number("pressure_Pa") == 300000 && Math.abs((t - 278.15) % 25) < 1e-6) {
                String at = t + " K, 0.3 MPa";
                rows.add(check("density of liquid", at, "kg/m3")
                        .ours(() -> WaterCoolant.WATER.densityKgPerM3(t))
                        .published(r.number("density_kg_m3"))
                        .within(2e-4, "fit")
                        .fitOfTable(COMPUTED));
                rows.add(check("heat capacity of liquid", at, "J/kgK")
                        .ours(() -> WaterCoolant.WATER.heatCapacityJPerKgK(t))
                        .published(r.number("specific_heat_J_kgK"))
                        .within(1e-3, "fit")
                        .fitOfTable(COMPUTED));
                rows.add(check("viscosity of liquid", at, "Pa s")
                        .ours(() -> WaterCoolant.WATER.viscosityPaS(t))
                        .published(r.number("viscosity_Pas"))
                        .within(5e-3, "fit")
                        .fitOfTable(COMPUTED));
                rows.add(check("conductivity of liquid", at, "W/mK")
                        .ours(() -> WaterCoolant.WATER.conductivityWPerMK(t))
                        .published(r.number("conductivity_W_mK"))
                        .within(2e-3, "fit")
                        .fitOfTable(COMPUTED));
            }
        }
        return rows;
    }
}
