package headertank.calc.hood;

import static headertank.calc.published.Check.check;

import headertank.calc.published.Check;
import headertank.calc.published.PublishedTestBase;
import java.util.List;

/** Panel materials against published ranges: each row's tolerance reaches to the nearer end of the range. */
public class HoodMaterialPublishedTest extends PublishedTestBase {

    private static final String STEEL = "DIN EN 12524:2000 (50 W/mK); range from Heat and Mass Transfer Data Book";
    private static final String ALUMINIUM = "DIN EN 12524:2000 (160 W/mK); range from memory";
    private static final String GLASS = "from memory; resin alone 0.2 W/mK by DIN EN 12524:2000";
    private static final String CARBON =
            "from memory; graphite fibre 25 vol% across 0.87 W/mK, Incropera and DeWitt Table A.2, from memory";

    public HoodMaterialPublishedTest() {}

    @Override
    public String subject() {
        return "Hood materials";
    }

    @Override
    public List<Check> checks() {
        return List.of(
                conductivity(HoodMaterial.STEEL, "carbon steel", STEEL, new Figure(50, 45, 65)),
                conductivity(HoodMaterial.ALUMINIUM, "aluminium alloy", ALUMINIUM, new Figure(160, 117, 180)),
                conductivity(
                        HoodMaterial.GLASS_FIBRE, "glass fibre epoxy, through", GLASS, new Figure(0.32, 0.25, 0.45)),
                conductivity(HoodMaterial.CARBON, "carbon fibre epoxy, through", CARBON, new Figure(0.7, 0.4, 1.0)));
    }

    /** A published value and the range that its sources span. */
    private record Figure(double value, double min, double max) {}

    private static Check conductivity(HoodMaterial material, String name, String source, Figure figure) {
        return check("conductivity", name, "W/mK")
                .ours(material::conductivityWPerMK)
                .published(figure.value())
                .withinAbsolute(
                        Math.min(figure.value() - figure.min(), figure.max() - figure.value()),
                        "stays inside the published range " + figure.min() + " to " + figure.max())
                .source(source);
    }
}
