package headertank.calc.radiator;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.calc.choice.TankPlacement;
import headertank.calc.coreclass.CoreClass;
import headertank.calc.coreclass.CoreClassSource;
import headertank.calc.coreclass.CoreFigure;
import headertank.calc.coreclass.CoreSpread;
import headertank.calc.fluid.Coolant;
import headertank.calc.fluid.GlycolKind;
import java.util.List;
import java.util.Map;
import java.util.ServiceLoader;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class CoreClassTest {

    private static List<CoreClass> loaded() {
        return ServiceLoader.load(CoreClassSource.class).stream()
                .flatMap(p -> p.get().classes().stream())
                .toList();
    }

    @Test
    void standardClassesAreFound() {
        assertThat(loaded())
                .extracting(CoreClass::id)
                .containsExactlyInAnyOrder(
                        "thin-original",
                        "dense-aluminium",
                        "bargain-aluminium",
                        "two-row-aluminium",
                        "old-copper-brass",
                        "copper-brass-louvred");
    }

    @Test
    void everyClassMakesACoreWithinTheCorrelations() {
        for (CoreClass c : loaded()) {
            for (TankPlacement tanks : TankPlacement.values()) {
                Radiator r = new Radiator(
                        new RadiatorSpec(c.geometry(new CoreGeometry.Face(0.6, 0.38), Map.of()), tanks, 1, 0, true));
                assertThat(r.notes(RadiatorPoint.withoutAir(360))).as(c.id()).hasSizeLessThanOrEqualTo(1);
            }
            CoreSpread spread = c.spread(Map.of());
            assertThat(spread.conductanceShare()).as(c.id()).isBetween(0.03, 0.30);
            assertThat(spread.airDropShare()).as(c.id()).isBetween(0.05, 0.60);
        }
    }

    @Test
    void measuredFiguresReplaceTypicalOnesAndNarrowTheSpread() {
        CoreClass c = byId().get("bargain-aluminium");
        Map<CoreFigure, Double> known = Map.of(CoreFigure.FIN_PITCH_M, 0.0018, CoreFigure.DEPTH_M, 0.032);
        CoreGeometry g = c.geometry(new CoreGeometry.Face(0.6, 0.38), known);
        assertThat(g.fins().pitchM()).isEqualTo(0.0018);
        assertThat(g.depthM()).isEqualTo(0.032);
        assertThat(g.fins().louvers().angleDeg()).isEqualTo(c.typical(CoreFigure.LOUVER_ANGLE_DEG));
        assertThat(c.spread(known).conductanceShare())
                .isLessThan(c.spread(Map.of()).conductanceShare());
    }

    @Test
    void denseCoreBeatsBargainCoreBeatsOldCore() {
        assertThat(heat("dense-aluminium")).isGreaterThan(heat("bargain-aluminium"));
        assertThat(heat("bargain-aluminium")).isGreaterThan(heat("old-copper-brass"));
        assertThat(heat("copper-brass-louvred")).isGreaterThan(heat("old-copper-brass"));
    }

    private static double heat(String id) {
        CoreGeometry g = byId().get(id).geometry(new CoreGeometry.Face(0.65, 0.40), Map.of());
        return Cores.radiator(g, 1)
                .heat(1.7, 308.15, 101325, 0.002, Coolant.of(GlycolKind.ETHYLENE, 0.5), 368.15)
                .heatW();
    }

    private static Map<String, CoreClass> byId() {
        return loaded().stream().collect(Collectors.toMap(CoreClass::id, c -> c));
    }
}
