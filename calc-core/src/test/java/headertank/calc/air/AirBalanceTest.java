package headertank.calc.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.Builds;
import headertank.calc.Rater;
import headertank.calc.rating.Plant;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937c;
import org.junit.jupiter.api.Test;

class AirBalanceTest {

    private static final long SEED = 20;

    /** Where the last flow is taken as the start of the next, the answer must not depend on it. */
    @Test
    void forgetsWhereItBegan() {
        RandomGenerator random = new Well19937c(SEED);
        for (var build : new headertank.calc.carspec.Build[] {Builds.road(), Builds.track(), Builds.drift()}) {
            Plant plant = Plant.of(Rater.standard().resolve(build));
            AirBalance kept = plant.airPath().balance(plant.coreDrop(), plant.fan());
            for (int i = 0; i < 300; i++) {
                double in = 280 + 60 * random.nextDouble();
                double out = in + 60 * random.nextDouble();
                double speed = random.nextInt(3) == 0 ? 0 : 50 * random.nextDouble();
                double fans = random.nextInt(3) == 0 ? 0 : 1.2 * random.nextDouble();
                AirConditions at = new AirConditions(speed, 0.3 * random.nextDouble(), 101_325, 300, in, out, 1);
                kept.around(at);
                kept.solve(in, out, fans);
                AirFlow fresh = AirCases.solve(plant.airPath(), at, plant.coreDrop(), plant.fan(), fans);
                String who = "seed " + SEED + " case " + i;
                assertThat(kept.massKgPerS())
                        .as(who)
                        .isCloseTo(fresh.massKgPerS(), within(1e-10 + 1e-10 * fresh.massKgPerS()));
                assertThat(kept.recirculationShare()).as(who).isCloseTo(fresh.recirculationShare(), within(1e-9));
                assertThat(kept.flow().residualPa()).as(who).isCloseTo(0, within(1e-6));
            }
        }
    }

    @Test
    void heatThatComesBackIsSolvedForAtOnce() {
        double ambient = 303;
        double capacity = 900;
        double coolant = 370;
        double perKelvin = 550;
        double inlet = Recirculation.inletBeforeCoreK(ambient, 3000, 0.2, perKelvin, coolant, capacity);
        double heat = perKelvin * (coolant - inlet);
        assertThat(Recirculation.inletK(ambient, 3000, 0.2, heat, capacity)).isCloseTo(inlet, within(1e-9));
        assertThat(Recirculation.inletBeforeCoreK(ambient, 0, 0, perKelvin, coolant, capacity))
                .isEqualTo(ambient);
    }
}
