package headertank.calc.radiator;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.calc.fluid.Coolant;
import headertank.calc.fluid.CoolantSpread;
import headertank.calc.fluid.GlycolKind;
import headertank.calc.quantity.Note;
import java.util.List;
import java.util.Random;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;

/** Bounds the work of a heat, not its time. */
class RadiatorTurnsTest {

    @Test
    void meanTemperaturesTakeFewTurns() {
        long seed = 5L;
        Random random = new Random(seed);
        Radiator[] radiators = {
            Cores.radiator(Cores.road(), 1), Cores.radiator(Cores.road(), 3), Cores.radiator(Cores.twoRows(), 2)
        };
        long all = 0;
        int cases = 20000;
        for (int i = 0; i < cases; i++) {
            Counting coolant = new Counting(Coolant.of(GlycolKind.ETHYLENE, 0.6 * random.nextDouble()));
            double air = FastMath.exp(-4 + 5.5 * random.nextDouble());
            double flow = FastMath.exp(-3 + 9 * random.nextDouble()) / 60000;
            double airIn = 250 + 80 * random.nextDouble();
            double coolantIn = 330 + 200 * random.nextDouble();
            RadiatorPoint p = radiators[i % 3].heat(air, airIn, 101325, flow, coolant, coolantIn);
            assertThat(coolant.looks).as("seed %d, case %d: %s", seed, i, p).isLessThanOrEqualTo(12);
            assertThat(p.heatW()).as("seed %d, case %d: %s", seed, i, p).isFinite();
            all += coolant.looks;
        }
        assertThat((double) all / cases).isLessThan(5);
    }

    /** Counts how often somebody looks at the density. */
    private static final class Counting implements Coolant {
        private final Coolant real;
        private int looks;

        Counting(Coolant real) {
            this.real = real;
        }

        @Override
        public double densityKgPerM3(double temperatureK) {
            looks++;
            return real.densityKgPerM3(temperatureK);
        }

        @Override
        public double heatCapacityJPerKgK(double temperatureK) {
            return real.heatCapacityJPerKgK(temperatureK);
        }

        @Override
        public double viscosityPaS(double temperatureK) {
            return real.viscosityPaS(temperatureK);
        }

        @Override
        public double conductivityWPerMK(double temperatureK) {
            return real.conductivityWPerMK(temperatureK);
        }

        @Override
        public double freezingK() {
            return real.freezingK();
        }

        @Override
        public double boilingK(double pressurePa) {
            return real.boilingK(pressurePa);
        }

        @Override
        public double vapourPressurePa(double temperatureK) {
            return real.vapourPressurePa(temperatureK);
        }

        @Override
        public double glycolMassFraction() {
            return real.glycolMassFraction();
        }

        @Override
        public GlycolKind kind() {
            return real.kind();
        }

        @Override
        public String source() {
            return real.source();
        }

        @Override
        public List<Note> notes(double temperatureK) {
            return real.notes(temperatureK);
        }

        @Override
        public CoolantSpread spread(double temperatureK) {
            return real.spread(temperatureK);
        }
    }
}
