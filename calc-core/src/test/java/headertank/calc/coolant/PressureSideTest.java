package headertank.calc.coolant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Physics;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class PressureSideTest {

    private static final double SEA_LEVEL = Physics.STANDARD_PRESSURE_PA;
    private static final Mixture THIRD = new Mixture(0.33);
    private static final CoolantFlow V8 = new CoolantFlow(4.63e-3, 4.59e-3, 4e-5, 72e3, 10.9e3, 12.6e3, 9e3, 40e3, 0);

    /** Source: independent prototype of the same equations. */
    @Test
    void gaugeForTenKelvin() {
        assertThat(BoilingMargin.requiredGaugePa(Physics.kelvin(110.2), 10, SEA_LEVEL, THIRD::saturationPa))
                .isCloseTo(74.3e3, Percentage.withPercentage(0.5));
        assertThat(BoilingMargin.requiredGaugePa(Physics.kelvin(60), 10, SEA_LEVEL, THIRD::saturationPa))
                .isZero();
    }

    /** Source: independent prototype of the same equations. */
    @Test
    void marginsOfFourCars() {
        assertThat(margin(94.4, 0.52, 110e3)).isCloseTo(36.2, within(0.2));
        assertThat(margin(95.4, 0.33, 130e3)).isCloseTo(33.7, within(0.2));
        assertThat(margin(110.2, 0.33, 130e3)).isCloseTo(19.0, within(0.2));
        assertThat(margin(137.3, 0.33, 130e3)).isCloseTo(-8.1, within(0.2));
    }

    @Test
    void altitudeAndAgeCostMargin() {
        double fresh = margin(105, 0.33, 130e3);
        BoilingMargin aged =
                BoilingMargin.of(Physics.kelvin(105), SEA_LEVEL, new PressureCap(130e3, 0.85), THIRD.boiling());
        BoilingMargin high = BoilingMargin.of(Physics.kelvin(105), 84556, new PressureCap(130e3, 1), THIRD.boiling());

        assertThat(aged.capPressurePa()).isCloseTo(SEA_LEVEL + 110.5e3, within(1e-6));
        assertThat(fresh - aged.marginK()).isBetween(2.0, 3.5);
        assertThat(fresh - high.marginK()).isBetween(2.0, 3.0);
    }

    @Test
    void limitsOfTheBulkMargin() {
        assertThat(BoilingMargin.standing(10)).isEqualTo(BoilingMargin.Standing.GO);
        assertThat(BoilingMargin.standing(9.99)).isEqualTo(BoilingMargin.Standing.CAUTION);
        assertThat(BoilingMargin.standing(5)).isEqualTo(BoilingMargin.Standing.CAUTION);
        assertThat(BoilingMargin.standing(4.99)).isEqualTo(BoilingMargin.Standing.NO_GO);
        assertThat(BoilingMargin.standing(Double.NaN)).isEqualTo(BoilingMargin.Standing.NO_GO);
    }

    /** The thermostat's drop holds up the head's pressure: about 2 K of boiling temperature for 12.6 kPa. */
    @Test
    void removedThermostatBoilsSoonerInTheHead() {
        double cap = SEA_LEVEL + 130e3;
        CoolantFlow without = new CoolantFlow(4.9e-3, 4.9e-3, 0, 68e3, 12.5e3, 0, 9e3, 45e3, 0);
        double with = HeadWall.pressurePa(cap, CapPosition.HOT_TANK, V8);
        double gone = HeadWall.pressurePa(cap, CapPosition.HOT_TANK, without);

        assertThat(with - gone).isCloseTo(12.6e3, within(1e-6));
        assertThat(THIRD.boilingK(with) - THIRD.boilingK(gone)).isBetween(1.5, 2.5);
    }

    @Test
    void headWallStandsAboveBoilingAtFullLoad() {
        HeadWall.Jacket jacket = new HeadWall.Jacket(Physics.kelvin(90), 2.5, 0.010, 1000.3, 5.928e-4, 3860.2, 0.5094);
        HeadWall wall = HeadWall.of(jacket, 1e6, SEA_LEVEL + 130e3, THIRD.boiling());

        assertThat(wall.filmWPerM2K()).isBetween(8e3, 15e3);
        assertThat(wall.superheatK()).isPositive();
        assertThat(wall.notes()).isEmpty();
        assertThat(HeadWall.of(jacket, 0, SEA_LEVEL + 130e3, THIRD.boiling()).wallK())
                .isEqualTo(jacket.bulkK());
        assertThatThrownBy(() -> HeadWall.nusselt(100, 4)).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void slowJacketIsNoted() {
        HeadWall.Jacket jacket = new HeadWall.Jacket(Physics.kelvin(90), 0.3, 0.010, 1000.3, 5.928e-4, 3860.2, 0.5094);

        assertThat(HeadWall.of(jacket, 1e5, SEA_LEVEL, THIRD.boiling()).notes())
                .singleElement()
                .satisfies(n -> assertThat(n.field()).isEqualTo("jacketReynolds"));
    }

    @Test
    void pumpInletLosesTheCoresDropOnlyWithTheCapOnTheHotTank() {
        double cap = SEA_LEVEL + 130e3;
        double vapour = THIRD.saturationPa(Physics.kelvin(101.5));
        PumpInlet hot = PumpInlet.of(cap, CapPosition.HOT_TANK, V8, vapour, 0.8);
        PumpInlet cold = PumpInlet.of(cap, CapPosition.COLD_TANK, V8, vapour, 0.8);

        assertThat(cold.marginPa() - hot.marginPa()).isCloseTo(10.9e3, within(1e-6));
        assertThat(hot.requiredPa()).isCloseTo(9600, within(1e-9));
        assertThat(hot.marginPa()).isPositive();
        assertThat(hot.flowFactor()).isEqualTo(1);
    }

    @Test
    void openCapCavitates() {
        double vapour = THIRD.saturationPa(Physics.kelvin(101.5));
        PumpInlet inlet = PumpInlet.of(SEA_LEVEL, CapPosition.HOT_TANK, V8, vapour, 0.8);

        assertThat(inlet.marginPa()).isNegative();
        assertThat(inlet.flowFactor()).isEqualTo(1 + 0.2 * inlet.marginPa() / 60e3);
        assertThat(PumpInlet.of(0.5 * SEA_LEVEL, CapPosition.HOT_TANK, V8, vapour, 0.8)
                        .flowFactor())
                .isEqualTo(0.8);
        assertThat(PumpInlet.of(SEA_LEVEL, CapPosition.HOT_TANK, V8, 2 * vapour, 0)
                        .flowFactor())
                .isEqualTo(1);
    }

    /** Densities at 20 and 110 deg C: Melinder 2010 polynomials, above 100 deg C along the tangent. */
    @Test
    void expansionFromColdToHot() {
        assertThat(ExpansionVolume.of(8e-3, 1068.318, 1006.745).expansionShare())
                .isCloseTo(0.061, within(0.0005));
        ExpansionVolume third = ExpansionVolume.of(8e-3, 1042.235, 984.851);
        assertThat(third.expansionShare()).isCloseTo(0.058, within(0.0005));
        assertThat(third.neededM3()).isCloseTo(1.1 * third.liquidM3(), within(1e-15));
        assertThatThrownBy(() -> ExpansionVolume.of(8e-3, 984, 1042)).isInstanceOf(OutOfRangeException.class);
    }

    private static double margin(double hotC, double glycol, double gaugePa) {
        return BoilingMargin.of(
                        Physics.kelvin(hotC), SEA_LEVEL, new PressureCap(gaugePa, 1), new Mixture(glycol).boiling())
                .marginK();
    }
}
