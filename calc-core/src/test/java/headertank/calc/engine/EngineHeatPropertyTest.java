package headertank.calc.engine;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.calc.fluid.Fuel;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

class EngineHeatPropertyTest {

    private static final long SEED = 20260731L;
    private static final int CASES = 20_000;

    @Test
    void sharesSumToOneAndNoneIsNegative() {
        Random random = new Random(SEED);
        for (int i = 0; i < CASES; i++) {
            EngineHeat engine = engine(random);
            double speed = engine.spec().ratedSpeedPerS() * (0.1 + 1.2 * random.nextDouble());
            HeatSplit h = engine.at(engine.spec().ratedPowerW() * 1.5 * random.nextDouble(), speed);
            String which = "seed " + SEED + " case " + i + " " + engine.spec() + " " + h;
            assertThat(Math.abs(h.residualW()) / h.fuelW()).as(which).isLessThan(1e-12);
            assertThat(List.of(h.coolantW(), h.oilW(), h.exhaustW(), h.unburntW(), h.miscW(), h.airMassKgPerS()))
                    .as(which)
                    .allSatisfy(w -> assertThat(w).isPositive().isFinite());
        }
    }

    @Test
    void coolantHeatRisesWithPowerFrictionAndWallShare() {
        Random random = new Random(SEED + 1);
        for (int i = 0; i < CASES; i++) {
            EngineHeat engine = engine(random);
            EngineSpec spec = engine.spec();
            double speed = spec.ratedSpeedPerS() * (0.2 + 0.8 * random.nextDouble());
            double power = spec.ratedPowerW() * random.nextDouble();
            String which = "seed " + (SEED + 1) + " case " + i + " " + spec;
            double now = engine.at(power, speed).coolantW();
            assertThat(engine.at(power * 1.05 + 1, speed).coolantW()).as(which).isGreaterThan(now);
            EngineSpec byClass = EngineSpec.of(
                    spec.engineClass(),
                    spec.displacementM3(),
                    spec.cylinders(),
                    spec.ratedPowerW(),
                    spec.ratedSpeedPerS(),
                    spec.idleSpeedPerS(),
                    spec.fuel());
            double base = new EngineHeat(byClass, EngineFactors.NOMINAL)
                    .at(power, speed)
                    .coolantW();
            assertThat(new EngineHeat(byClass, new EngineFactors(1.1, 1, 1, 0))
                            .at(power, speed)
                            .coolantW())
                    .as(which)
                    .isGreaterThanOrEqualTo(base);
            assertThat(new EngineHeat(byClass, new EngineFactors(1, 1.1, 1, 0))
                            .at(power, speed)
                            .coolantW())
                    .as(which)
                    .isGreaterThan(base);
        }
    }

    @Test
    void exhaustLiesInItsBoundsAtFullLoad() {
        for (EngineClass kind : EngineClass.values()) {
            for (Fuel fuel : Fuel.values()) {
                if (kind.isDiesel() == fuel.isDiesel()) {
                    EngineSpec spec = EngineSpec.of(kind, 2.5e-3, 4, 140e3, kind.isDiesel() ? 65 : 100, 14, fuel);
                    HeatSplit h =
                            new EngineHeat(spec, EngineFactors.NOMINAL).at(spec.ratedPowerW(), spec.ratedSpeedPerS());
                    assertThat(h.notes()).as("%s %s %s", kind, fuel, h).isEmpty();
                }
            }
        }
    }

    private static EngineHeat engine(Random random) {
        EngineClass kind = EngineClass.values()[random.nextInt(EngineClass.values().length)];
        Fuel fuel = kind.isDiesel() ? Fuel.DIESEL : Fuel.values()[random.nextInt(5)];
        double litres = 0.6 + 6.4 * random.nextDouble();
        double rated = kind.isDiesel() ? 50 + 30 * random.nextDouble() : 70 + 80 * random.nextDouble();
        double power = litres * (30e3 + 70e3 * random.nextDouble());
        OptionalDouble measured =
                random.nextInt(3) == 0 ? OptionalDouble.of(0.15 + 0.2 * random.nextDouble()) : OptionalDouble.empty();
        EngineSpec spec = new EngineSpec(
                kind,
                litres / 1000,
                1 + random.nextInt(12),
                power,
                rated,
                10 + 8 * random.nextDouble(),
                fuel,
                measured);
        return new EngineHeat(
                spec,
                new EngineFactors(
                        0.7 + 0.6 * random.nextDouble(),
                        0.7 + 0.6 * random.nextDouble(),
                        0.9 + 0.2 * random.nextDouble(),
                        0.1 * random.nextDouble() - 0.05));
    }
}
