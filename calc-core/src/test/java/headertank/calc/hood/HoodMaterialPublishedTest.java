package headertank.calc.hood;

import static headertank.calc.published.Check.check;

import headertank.calc.published.Check;
import headertank.calc.published.PublishedTestBase;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;

/** Panel materials against published ranges: each row's tolerance reaches to the nearer end of the range. */
public class HoodMaterialPublishedTest extends PublishedTestBase {

    private static final String STEEL =
            "DIN EN 12524:2000 (50 W/mK, 7800 kg/m3, 450 J/kgK); range from Heat and Mass Transfer Data Book";
    private static final String ALUMINIUM = "DIN EN 12524:2000 (160 W/mK, 2800 kg/m3, 880 J/kgK); range from memory";
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
        List<Check> rows = new ArrayList<>();
        rows.addAll(of(
                HoodMaterial.STEEL,
                "carbon steel",
                STEEL,
                figure(50, 45, 65),
                figure(7800, 7750, 7870),
                figure(450, 430, 490)));
        rows.addAll(of(
                HoodMaterial.ALUMINIUM,
                "aluminium alloy",
                ALUMINIUM,
                figure(160, 117, 180),
                figure(2800, 2660, 2800),
                figure(880, 867, 900)));
        rows.addAll(of(
                HoodMaterial.GLASS_FIBRE,
                "glass fibre epoxy, through",
                GLASS,
                figure(0.32, 0.25, 0.45),
                figure(1850, 1750, 2000),
                figure(1100, 900, 1250)));
        rows.addAll(of(
                HoodMaterial.CARBON,
                "carbon fibre epoxy, through",
                CARBON,
                figure(0.7, 0.4, 1.0),
                figure(1550, 1400, 1600),
                figure(950, 850, 1100)));
        return rows;
    }

    /** A published value and the range that its sources span. */
    private record Figure(double value, double min, double max) {}

    private static Figure figure(double value, double min, double max) {
        return new Figure(value, min, max);
    }

    private static List<Check> of(
            HoodMaterial m, String name, String source, Figure conductivity, Figure density, Figure heatCapacity) {
        return List.of(
                row("conductivity", name, "W/mK", m::conductivityWPerMK, conductivity, source),
                row("density", name, "kg/m3", m::densityKgPerM3, density, source),
                row("specific heat capacity", name, "J/kgK", m::heatCapacityJPerKgK, heatCapacity, source));
    }

    private static Check row(
            String quantity, String name, String unit, DoubleSupplier ours, Figure figure, String source) {
        return check(quantity, name, unit)
                .ours(ours)
                .published(figure.value())
                .withinAbsolute(
                        Math.min(figure.value() - figure.min(), figure.max() - figure.value()),
                        "stays inside the published range " + figure.min() + " to " + figure.max())
                .source(source);
    }
}
