package headertank.calc.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import headertank.calc.quantity.Note;
import headertank.calc.quantity.OutOfRangeException;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CoolantTest {

    /** Independent prototype of the same equations. */
    @ParameterizedTest
    @CsvSource({
        "ETHYLENE, 0.33, 90, 1000.3, 3860.2, 5.928e-4, 0.5094",
        "ETHYLENE, 0.33, 110, 984.9, 3905.2, 4.637e-4, 0.5236",
        "ETHYLENE, 0.50, 25, 1062.2, 3338.1, 3.156e-3, 0.3922",
        "ETHYLENE, 0.50, 90, 1019.0, 3615.8, 8.195e-4, 0.4315",
        "ETHYLENE, 0.50, 110, 1003.9, 3675.1, 5.902e-4, 0.4426",
        "PROPYLENE, 0.33, 90, 981.7, 4005.6, 6.398e-4, 0.4835",
        "PROPYLENE, 0.33, 110, 967.2, 4055.8, 4.744e-4, 0.4978",
        "PROPYLENE, 0.50, 90, 987.1, 3797.9, 9.032e-4, 0.3967",
        "PROPYLENE, 0.50, 110, 971.5, 3873.9, 6.341e-4, 0.4083"
    })
    void melinder(GlycolKind kind, double x, double celsius, double rho, double cp, double mu, double k) {
        Coolant c = new MelinderCoolant(kind, x);
        double t = celsius + 273.15;
        assertThat(c.densityKgPerM3(t)).isCloseTo(rho, withPercentage(0.1));
        assertThat(c.heatCapacityJPerKgK(t)).isCloseTo(cp, withPercentage(0.1));
        assertThat(c.viscosityPaS(t)).isCloseTo(mu, withPercentage(0.1));
        assertThat(c.conductivityWPerMK(t)).isCloseTo(k, withPercentage(0.1));
    }

    /** Independent prototype of the same equations. */
    @ParameterizedTest
    @CsvSource({"ETHYLENE, 0.33, -17.05", "ETHYLENE, 0.50, -35.99", "PROPYLENE, 0.33, -14.83", "PROPYLENE, 0.50, -32.19"
    })
    void melinderFreezing(GlycolKind kind, double x, double celsius) {
        assertThat(new MelinderCoolant(kind, x).freezingK() - 273.15).isCloseTo(celsius, within(0.01));
    }

    /** Independent prototype of the same equations. */
    @ParameterizedTest
    @CsvSource({
        "ETHYLENE, 0.50, 107.07, 126.70, 133.01",
        "ETHYLENE, 0.33, 103.67, 122.92, 129.11",
        "PROPYLENE, 0.50, 105.82, 125.29, 131.55"
    })
    void bubblePoint(GlycolKind kind, double x, double open, double at90, double at130) {
        Coolant c = Coolant.of(kind, x);
        assertThat(c.boilingK(101325) - 273.15).isCloseTo(open, within(0.02));
        assertThat(c.boilingK(101325 + 90e3) - 273.15).isCloseTo(at90, within(0.02));
        assertThat(c.boilingK(101325 + 130e3) - 273.15).isCloseTo(at130, within(0.02));
    }

    /** Independent prototype of the same equations. */
    @Test
    void massFractionOfAMixtureByVolume() {
        assertThat(Coolant.ofVolumeFraction(GlycolKind.ETHYLENE, 0.5).glycolMassFraction())
                .isCloseTo(0.5272, within(1e-4));
        assertThat(Coolant.ofVolumeFraction(GlycolKind.PROPYLENE, 0.5).glycolMassFraction())
                .isCloseTo(0.5093, within(1e-4));
    }

    @ParameterizedTest
    @CsvSource({"ETHYLENE, ashrae-ethylene.csv, 75", "PROPYLENE, ashrae-propylene.csv, 73"})
    void wholeTables(GlycolKind kind, String file, int rows) {
        List<Figures.Row> table = Figures.read(getClass(), file);
        assertThat(table).hasSize(rows);
        for (Figures.Row r : table) {
            double t = r.number("temperature_K");
            double x = r.number("mass_fraction");
            if (x > 0.60) {
                continue; // beyond what both sources cover
            }
            Coolant ours = new AshraeCoolant(kind, x);
            Coolant second = new MelinderCoolant(kind, x);
            boolean cold = t < 273.15;
            if (r.text("note").isEmpty()) {
                assertThat(ours.densityKgPerM3(t)).isCloseTo(r.number("density_kg_m3"), withPercentage(0.01));
                assertThat(second.densityKgPerM3(t)).isCloseTo(r.number("density_kg_m3"), withPercentage(1.0));
            }
            assertThat(ours.heatCapacityJPerKgK(t)).isCloseTo(r.number("specific_heat_J_kgK"), withPercentage(0.05));
            assertThat(ours.conductivityWPerMK(t)).isCloseTo(r.number("conductivity_W_mK"), withPercentage(0.3));
            assertThat(ours.viscosityPaS(t)).isCloseTo(r.number("viscosity_Pas"), withPercentage(cold ? 6.0 : 3.0));
            if (cold) {
                continue; // the two sources were compared from 0 to 100 C
            }
            assertThat(second.conductivityWPerMK(t)).isCloseTo(r.number("conductivity_W_mK"), withPercentage(5.5));
            assertThat(second.heatCapacityJPerKgK(t)).isCloseTo(r.number("specific_heat_J_kgK"), withPercentage(2.1));
            if (t > 318) {
                assertThat(second.viscosityPaS(t)).isCloseTo(r.number("viscosity_Pas"), withPercentage(6.0));
            }
        }
    }

    @Test
    void wholeTableOfFreezingPoints() {
        for (Figures.Row r : Figures.read(getClass(), "ashrae-freezing.csv")) {
            Coolant c = Coolant.of(GlycolPublishedTest.kind(r), r.number("mass_fraction"));
            assertThat(c.freezingK()).isCloseTo(r.number("freezing_temperature_K"), within(0.5));
        }
    }

    @Test
    void plainWaterIsTheWaterFormulation() {
        Coolant c = Coolant.of(GlycolKind.NONE, 0.3);
        assertThat(c.kind()).isEqualTo(GlycolKind.NONE);
        assertThat(c).isSameAs(WaterCoolant.WATER);
        assertThat(c.boilingK(101418)).isCloseTo(373.15, within(1e-3));
        assertThat(c.freezingK()).isEqualTo(273.15);
        assertThat(Coolant.of(GlycolKind.ETHYLENE, 0).kind()).isEqualTo(GlycolKind.NONE);
    }

    @Test
    void weakMixtureTendsToWater() {
        for (GlycolKind kind : List.of(GlycolKind.ETHYLENE, GlycolKind.PROPYLENE)) {
            Coolant c = Coolant.of(kind, 1e-9);
            for (double t = 280; t <= 373; t += 3) {
                assertThat(c.densityKgPerM3(t)).isCloseTo(WaterCoolant.WATER.densityKgPerM3(t), withPercentage(1e-5));
                assertThat(c.viscosityPaS(t)).isCloseTo(WaterCoolant.WATER.viscosityPaS(t), withPercentage(1e-5));
                assertThat(c.heatCapacityJPerKgK(t))
                        .isCloseTo(WaterCoolant.WATER.heatCapacityJPerKgK(t), withPercentage(1e-5));
                assertThat(c.conductivityWPerMK(t))
                        .isCloseTo(WaterCoolant.WATER.conductivityWPerMK(t), withPercentage(1e-5));
            }
        }
    }

    /** Value and slope of density, heat capacity and conductivity, value of viscosity. */
    @Test
    void extensionJoinsAt100C() {
        double t = 373.15;
        double h = 1e-4;
        everyMixture().forEach(c -> {
            List<DoubleUnaryOperator> tangents =
                    List.of(c::densityKgPerM3, c::heatCapacityJPerKgK, c::conductivityWPerMK);
            for (DoubleUnaryOperator f : tangents) {
                double below = (f.applyAsDouble(t) - f.applyAsDouble(t - h)) / h;
                double above = (f.applyAsDouble(t + h) - f.applyAsDouble(t)) / h;
                assertThat(above).isCloseTo(below, within(1e-5 * Math.abs(f.applyAsDouble(t)) / 100 + 1e-6));
            }
            assertThat(c.viscosityPaS(t + 1e-9)).isCloseTo(c.viscosityPaS(t), withPercentage(1e-8));
        });
    }

    @Test
    void viscosityFallsWithTemperatureAndRisesWithGlycol() {
        everyMixture().forEach(c -> {
            double last = Double.POSITIVE_INFINITY;
            double lowest = Math.max(c.freezingK(), 243.15);
            for (double t = lowest; t <= 408.15; t += 0.25) {
                double mu = c.viscosityPaS(t);
                assertThat(mu)
                        .as("%s x %s at %s K", c.kind(), c.glycolMassFraction(), t)
                        .isLessThan(last);
                last = mu;
            }
        });
        for (GlycolKind kind : List.of(GlycolKind.ETHYLENE, GlycolKind.PROPYLENE)) {
            for (double t = 293.15; t < 400; t += 10) {
                double last = 0;
                for (double x = 0.15; x <= 0.60; x += 0.01) {
                    double mu = Coolant.of(kind, x).viscosityPaS(t);
                    assertThat(mu).as("%s x %s at %s K", kind, x, t).isGreaterThan(last);
                    last = mu;
                }
            }
        }
    }

    @Test
    void takesAnyTemperatureOfACar() {
        long seed = 7L;
        Random random = new Random(seed);
        for (int i = 0; i < 5000; i++) {
            GlycolKind kind = GlycolKind.values()[random.nextInt(3)];
            Coolant c = Coolant.of(kind, 0.70 * random.nextDouble());
            double t = 233 + 240 * random.nextDouble();
            double[] values = {
                c.densityKgPerM3(t),
                c.heatCapacityJPerKgK(t),
                c.viscosityPaS(t),
                c.conductivityWPerMK(t),
                c.vapourPressurePa(t),
                c.spread(t).viscosityShare()
            };
            assertThat(Arrays.stream(values).allMatch(v -> v > 0 && v < 1e8))
                    .as("seed %d: %s x %s at %s K: %s", seed, kind, c.glycolMassFraction(), t, Arrays.toString(values))
                    .isTrue();
            double p = 3e3 + 5e5 * random.nextDouble();
            assertThat(c.vapourPressurePa(c.boilingK(p))).as("seed %d", seed).isCloseTo(p, withPercentage(1e-6));
        }
    }

    @Test
    void saysWhereTheSourceEnds() {
        Coolant c = Coolant.of(GlycolKind.ETHYLENE, 0.5);
        assertThat(c.notes(363.15)).isEmpty();
        assertThat(c.notes(380)).singleElement().satisfies(n -> {
            assertThat(n.action()).isEqualTo(Note.Action.WIDENED);
            assertThat(n.widening()).isEqualTo(2.0);
        });
        assertThat(c.notes(420)).singleElement().extracting(Note::action).isEqualTo(Note.Action.CLAMPED);
        assertThat(c.notes(234)).singleElement().extracting(Note::action).isEqualTo(Note.Action.CLAMPED);
        assertThat(c.viscosityPaS(470)).isEqualTo(c.viscosityPaS(408.15));
        assertThat(Coolant.of(GlycolKind.ETHYLENE, 0.65).notes(363.15))
                .singleElement()
                .extracting(Note::field)
                .isEqualTo("glycolMassFraction");
        assertThatThrownBy(() -> Coolant.of(GlycolKind.ETHYLENE, 0.71)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> c.boilingK(1e9)).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void spreadCarriesTheDifferenceOfTheSources() {
        double t = 363.15;
        Coolant c = Coolant.of(GlycolKind.PROPYLENE, 0.3);
        double difference =
                new MelinderCoolant(GlycolKind.PROPYLENE, 0.3).conductivityWPerMK(t) / c.conductivityWPerMK(t) - 1;
        assertThat(Math.abs(difference)).isGreaterThan(0.02);
        assertThat(c.spread(t).conductivityShare()).isCloseTo(Math.abs(difference), within(1e-12));
        assertThat(c.spread(t).heatCapacityShare()).isEqualTo(0.007);
        assertThat(c.spread(374).heatCapacityShare()).isEqualTo(0.014);
        assertThat(c.spread(t).boilingK()).isEqualTo(1.5);
        assertThat(Coolant.of(GlycolKind.NONE, 0).spread(t).viscosityShare()).isEqualTo(0.01);
    }

    private static Stream<Coolant> everyMixture() {
        return Stream.of(GlycolKind.ETHYLENE, GlycolKind.PROPYLENE)
                .flatMap(kind -> Stream.iterate(0.02, x -> x <= 0.601, x -> x + 0.02)
                        .flatMap(x -> Stream.of(new AshraeCoolant(kind, x), new MelinderCoolant(kind, x))));
    }
}
