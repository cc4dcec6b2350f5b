package headertank.calc.radiator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import headertank.calc.choice.FinKind;
import headertank.calc.choice.TankPlacement;
import headertank.calc.fluid.Air;
import headertank.calc.fluid.Coolant;
import headertank.calc.fluid.GlycolKind;
import headertank.calc.fluid.MelinderCoolant;
import headertank.calc.quantity.Note;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.TubeRegime;
import headertank.calc.quantity.WorkingLine;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RadiatorTest {

    private static final double SEA_LEVEL = 101325;
    private static final double L_PER_MIN = 1 / 60000.0;
    private static final double AIR_IN = 308.15;
    private static final double COOLANT_IN = 368.15;

    private final Coolant coolant = new MelinderCoolant(GlycolKind.ETHYLENE, 0.52);
    private final Radiator road = Cores.radiator(Cores.road(), 1);

    /** Independent prototype of the same equations. */
    @Test
    void areas() {
        CoreAreas a = road.areas();
        assertThat(a.tubes().perRow()).isEqualTo(39);
        assertThat(a.air().areaM2()).isCloseTo(9.7517, withPercentage(0.01));
        assertThat(a.air().freeAreaM2()).isCloseTo(0.192949, withPercentage(0.01));
        assertThat(a.air().hydraulicDiameterM()).isCloseTo(2.05776e-3, withPercentage(0.01));
        assertThat(a.tubes().hydraulicDiameterM()).isCloseTo(2.65373e-3, withPercentage(0.01));
        assertThat(a.tubes().areaM2()).isCloseTo(1.35876, withPercentage(0.01));
    }

    /** Independent prototype of the same equations: 5 m/s, all properties at 50 C. */
    @Test
    void airSide() {
        double t = 323.15;
        double rho = Air.densityKgPerM3(SEA_LEVEL, t, 0);
        double v = 5 / road.areas().air().freeShare();
        assertThat(v).isCloseTo(6.7375, withPercentage(0.01));
        double mass = rho * 5 * road.faceAreaM2();
        RadiatorPoint p = road.heatWithPropertiesAt(t, 363.15, mass, t, 101_325, 0.002, coolant, COOLANT_IN);
        assertThat(p.louverReynolds()).isCloseTo(414.4, withPercentage(0.5));
        assertThat(p.finEfficiency()).isCloseTo(0.8782, withPercentage(0.5));
        assertThat(road.airDropPa(mass, t, t, SEA_LEVEL)).isCloseTo(134.3, withPercentage(0.5));
        LouveredFins fins = new LouveredFins(0.00127, 0.008, 0.026, 0.0011, 27, 0.0068, 0.00008, 0.002, 0.00205776);
        assertThat(fins.colburn(414.4)).isCloseTo(0.02129, withPercentage(0.5));
        assertThat(fins.friction(414.4)).isCloseTo(0.1021, withPercentage(0.5));
    }

    /** Independent prototype of the same equations. */
    @Test
    void airDropCurve() {
        assertThat(seaLevelDrop(road).linearPaSPerM()).isCloseTo(14.039, withPercentage(0.05));
        assertThat(seaLevelDrop(road).quadraticPaS2PerM2()).isCloseTo(2.4272, withPercentage(0.05));
        AirDrop drift = seaLevelDrop(Cores.radiator(Cores.twoRows(), 1));
        assertThat(drift.linearPaSPerM()).isCloseTo(17.408, withPercentage(0.05));
        assertThat(drift.quadraticPaS2PerM2()).isCloseTo(4.5514, withPercentage(0.05));
    }

    /** The curve at the film temperature of 60 C. */
    private static AirDrop seaLevelDrop(Radiator radiator) {
        return radiator.airDrop(333.15, 333.15, SEA_LEVEL);
    }

    private static double dropPa(AirDrop curve, double faceVelocityMPerS) {
        return faceVelocityMPerS * (curve.linearPaSPerM() + curve.quadraticPaS2PerM2() * faceVelocityMPerS);
    }

    @Test
    void airDropCurveFollowsTheFormula() {
        for (double in : new double[] {250, 300, 333.15}) {
            double out = in + 35;
            AirDrop curve = road.airDrop(in, out, 90000);
            double rho = Air.densityKgPerM3(90000, in, 0);
            for (double v = 1; v <= 12; v += 0.5) {
                double full = road.airDropPa(rho * v * road.faceAreaM2(), in, out, 90000);
                assertThat(dropPa(curve, v)).isCloseTo(full, withPercentage(6));
            }
        }
    }

    /** Independent prototype of the same equations: coolant at 90 C. */
    @Test
    void tubeSide() {
        assertThat(road.coolantDropPa(120 * L_PER_MIN, coolant, 363.15)).isCloseTo(11.92e3, withPercentage(0.5));
        RadiatorPoint p = prototype(road, 120);
        assertThat(p.tubeReynolds()).isCloseTo(4573, withPercentage(0.5));
        assertThat(p.tubeRegime()).isEqualTo(TubeRegime.TURBULENT);
    }

    /** Independent prototype of the same equations: coolant properties at 90 C, air properties at 35 C. */
    @Test
    void heatOfTheRoadCore() {
        RadiatorPoint p = prototype(road, 120);
        assertThat(p.conductanceWPerK()).isCloseTo(1452.2, withPercentage(0.5));
        assertThat(p.effectiveness()).isCloseTo(0.5376, withPercentage(0.5));
        assertThat(p.heatW()).isCloseTo(55.15e3, withPercentage(0.5));
        assertThat(p.coolantOutK() - 273.15).isCloseTo(87.47, within(0.05));
        assertThat(p.airSideResistanceShare()).isCloseTo(0.78, within(0.01));
    }

    /** Independent prototype of the same equations: coolant properties at 90 C, air properties at 35 C. */
    @ParameterizedTest
    @CsvSource({
        "1, 20, 30.50, ",
        "2, 20, 31.11, ",
        "3, 20, 31.65, ",
        "1, 60, 37.77, 2.9",
        "2, 60, 51.69, 23.8",
        "3, 60, 53.41, 72.4",
        "1, 120, 55.15, 11.9",
        "2, 120, 58.08, 79.9",
        "3, 120, 59.04, 245.7"
    })
    void passes(int passes, double litresPerMin, double heatKw, Double dropKpa) {
        Radiator r = Cores.radiator(Cores.road(), passes);
        assertThat(prototype(r, litresPerMin).heatW()).isCloseTo(heatKw * 1e3, withPercentage(0.5));
        if (dropKpa != null) {
            assertThat(r.coolantDropPa(litresPerMin * L_PER_MIN, coolant, 363.15) / 1e3)
                    .isCloseTo(dropKpa, within(0.06));
        }
    }

    /** Independent prototype of the same equations: coolant properties at 90 C, air properties at 35 C. */
    @ParameterizedTest
    @CsvSource({"120, 48.14, 2787", "200, 56.81, 4645", "300, 59.66, 6968"})
    void tanksAtTopAndBottom(double litresPerMin, double heatKw, double reynolds) {
        Radiator r = new Radiator(new RadiatorSpec(Cores.road(), TankPlacement.TOP_AND_BOTTOM, 1, 0, true));
        RadiatorPoint p = prototype(r, litresPerMin);
        assertThat(p.heatW()).isCloseTo(heatKw * 1e3, withPercentage(0.5));
        assertThat(p.tubeReynolds()).isCloseTo(reynolds, withPercentage(0.5));
        assertThat(r.coolantDropPa(200 * L_PER_MIN, coolant, 363.15))
                .isLessThan(0.35 * road.coolantDropPa(200 * L_PER_MIN, coolant, 363.15));
    }

    /** Independent prototype of the same equations, to its printed digits. */
    @ParameterizedTest
    @CsvSource({
        "5, 16.1",
        "10, 24.0",
        "20, 30.5",
        "40, 35.4",
        "60, 37.8",
        "80, 48.5",
        "100, 53.0",
        "120, 55.2",
        "160, 57.6",
        "200, 59.1",
        "300, 61.2"
    })
    void slowCoolant(double litresPerMin, double heatKw) {
        assertThat(prototype(road, litresPerMin).heatW() / 1e3).isCloseTo(heatKw, within(0.05 + 0.005 * heatKw));
    }

    /** Independent prototype of the same equations. */
    @Test
    void materials() {
        double wall = 0.00013;
        double fin = 0.00005;
        FinKind louvered = FinKind.LOUVERED;
        CoreGeometry copper = Cores.core(0.65, 0.4, 0.026, 1, 0, wall, 0.00127, fin, louvered, 27, 0.85, 377, 110, 0);
        CoreGeometry badBond =
                Cores.core(0.65, 0.4, 0.026, 1, 0, wall, 0.00127, fin, louvered, 27, 0.85, 377, 110, 2e-5);
        CoreGeometry bargain = Cores.core(0.65, 0.4, 0.026, 1, 0, 0.0003, 0.002, 8e-5, louvered, 20, 0.70, 180, 160, 0);
        assertThat(prototype(Cores.radiator(copper, 1), 120).heatW()).isCloseTo(54.8e3, withPercentage(0.5));
        assertThat(prototype(Cores.radiator(badBond, 1), 120).heatW()).isCloseTo(40.9e3, withPercentage(0.5));
        assertThat(prototype(Cores.radiator(bargain, 1), 120).heatW()).isCloseTo(38.7e3, withPercentage(0.5));
    }

    private RadiatorPoint prototype(Radiator r, double litresPerMin) {
        return r.heatWithPropertiesAt(
                AIR_IN, 363.15, 1.7, AIR_IN, 101_325, litresPerMin * L_PER_MIN, coolant, COOLANT_IN);
    }

    @Test
    void meanTemperaturesAreFound() {
        long seed = 21L;
        Random random = new Random(seed);
        for (int i = 0; i < 500; i++) {
            double air = 0.2 + 3 * random.nextDouble();
            double flow = (5 + 295 * random.nextDouble()) * L_PER_MIN;
            double in = 330 + 70 * random.nextDouble();
            double fast = road.heat(air, AIR_IN, SEA_LEVEL, flow, coolant, in).heatW();
            double slow =
                    road.heat(air, AIR_IN, SEA_LEVEL, flow, coolant, in, 0).heatW();
            assertThat(fast)
                    .as("seed %d: %s kg/s, %s m3/s, %s K", seed, air, flow, in)
                    .isCloseTo(slow, withPercentage(1e-5));
        }
    }

    @Test
    void heatLeavesOneStreamAndEntersTheOther() {
        long seed = 22L;
        Random random = new Random(seed);
        for (int i = 0; i < 1000; i++) {
            Radiator r = Cores.radiator(random.nextBoolean() ? Cores.road() : Cores.twoRows(), 1 + random.nextInt(3));
            double air = 0.05 + 4 * random.nextDouble();
            double airIn = 250 + 70 * random.nextDouble();
            double flow = (1 + 300 * random.nextDouble()) * L_PER_MIN;
            double in = airIn + 1 + 100 * random.nextDouble();
            RadiatorPoint p = r.heat(air, airIn, 85000, flow, coolant, in);
            String as = "seed " + seed + ", case " + i + ": " + p;
            double airMean = 0.5 * (airIn + p.airOutK());
            double coolantMean = 0.5 * (in + p.coolantOutK());
            double airGain = air * Air.heatCapacityJPerKgK(airMean) * (p.airOutK() - airIn);
            double coolantLoss = flow
                    * coolant.densityKgPerM3(coolantMean)
                    * coolant.heatCapacityJPerKgK(coolantMean)
                    * (in - p.coolantOutK());
            assertThat(airGain).as(as).isCloseTo(p.heatW(), withPercentage(1e-6));
            assertThat(coolantLoss).as(as).isCloseTo(p.heatW(), withPercentage(1e-6));
            assertThat(p.airOutK()).as(as).isStrictlyBetween(airIn, in);
            assertThat(p.coolantOutK()).as(as).isStrictlyBetween(airIn, in);
            // With the capacity rates of the point itself the two sides are equal to rounding.
            double smaller = p.conductanceWPerK() / p.ntu();
            double larger = smaller / p.capacityRatio();
            double first = p.airOutK() - airIn;
            double second = in - p.coolantOutK();
            assertThat(smaller * Math.max(first, second)).as(as).isCloseTo(p.heatW(), withPercentage(1e-7));
            assertThat(larger * Math.min(first, second)).as(as).isCloseTo(p.heatW(), withPercentage(1e-7));
        }
    }

    @Test
    void moreCoolantNeverTakesLessHeat() {
        for (int passes = 1; passes <= 3; passes++) {
            for (Coolant c : List.of(coolant, Coolant.of(GlycolKind.NONE, 0), Coolant.of(GlycolKind.PROPYLENE, 0.5))) {
                Radiator r = Cores.radiator(Cores.road(), passes);
                double lastHeat = 0;
                for (double q = 5; q <= 300; q += 0.5) {
                    RadiatorPoint p = r.heat(1.7, AIR_IN, SEA_LEVEL, q * L_PER_MIN, c, COOLANT_IN);
                    assertThat(p.heatW()).as("%d passes, %s L/min", passes, q).isGreaterThan(lastHeat);
                    lastHeat = p.heatW();
                }
            }
        }
    }

    @Test
    void slowCoolantTableShowsBothTruths() {
        List<Double> flows = List.of(10 * L_PER_MIN, 20 * L_PER_MIN, 40 * L_PER_MIN, 120 * L_PER_MIN, 300 * L_PER_MIN);
        List<FlowPoint> lines = road.heatAgainstCoolantFlow(flows, 1.7, AIR_IN, SEA_LEVEL, coolant, COOLANT_IN);
        assertThat(lines).hasSize(5);
        assertThat(lines).extracting(FlowPoint::heatW).isSorted();
        assertThat(lines).extracting(l -> -l.coolantDropK()).isSorted();
        assertThat(lines).extracting(FlowPoint::pressureDropPa).isSorted();
        assertThat(lines.get(4).heatW() / lines.get(3).heatW()).isBetween(1.08, 1.14);
    }

    @Test
    void moreAirMoreHeatAndMoreDrop() {
        double lastHeat = 0;
        double lastDrop = 0;
        for (double m = 0.01; m < 6; m *= 1.05) {
            RadiatorPoint p = road.heat(m, AIR_IN, SEA_LEVEL, 0.002, coolant, COOLANT_IN);
            double drop = road.airDropPa(m, AIR_IN, p.airOutK(), SEA_LEVEL);
            assertThat(p.heatW()).as("%s kg/s", m).isGreaterThan(lastHeat);
            assertThat(drop).as("%s kg/s", m).isGreaterThan(lastDrop);
            lastHeat = p.heatW();
            lastDrop = drop;
        }
        assertThat(road.airDropPa(-1, AIR_IN, 340, SEA_LEVEL)).isEqualTo(-road.airDropPa(1, AIR_IN, 340, SEA_LEVEL));
    }

    @Test
    void standsStillWithoutAFault() {
        RadiatorPoint noAir = road.heat(0, AIR_IN, SEA_LEVEL, 0.002, coolant, COOLANT_IN);
        assertThat(noAir.heatW()).isZero();
        assertThat(noAir.coolantOutK()).isEqualTo(COOLANT_IN);
        RadiatorPoint noCoolant = road.heat(1.7, AIR_IN, SEA_LEVEL, 0, coolant, COOLANT_IN);
        assertThat(noCoolant.heatW()).isZero();
        assertThat(noCoolant.airOutK()).isEqualTo(AIR_IN);
        assertThat(road.airDropPa(0, AIR_IN, AIR_IN, SEA_LEVEL)).isZero();
        assertThat(road.coolantDropPa(0, coolant, COOLANT_IN)).isZero();
        RadiatorPoint almost = road.heat(1e-9, AIR_IN, SEA_LEVEL, 1e-12, coolant, COOLANT_IN);
        assertThat(almost.heatW()).isBetween(0.0, 1e-3);
        assertThat(almost.coolantOutK()).isBetween(AIR_IN, COOLANT_IN);
        RadiatorPoint level = road.heat(1.7, AIR_IN, SEA_LEVEL, 0.002, coolant, AIR_IN);
        assertThat(level.heatW()).isZero();
        assertThat(level.effectiveness()).isBetween(0.3, 0.6);
        assertThatThrownBy(() -> road.heat(Double.NaN, AIR_IN, SEA_LEVEL, 0.002, coolant, COOLANT_IN))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void blockedFaceCostsHeatAndRaisesTheDrop() {
        Radiator blocked = new Radiator(new RadiatorSpec(Cores.road(), TankPlacement.SIDES, 1, 0.2, true));
        assertThat(blocked.heat(1.7, AIR_IN, SEA_LEVEL, 0.002, coolant, COOLANT_IN)
                        .heatW())
                .isLessThan(0.95
                        * road.heat(1.7, AIR_IN, SEA_LEVEL, 0.002, coolant, COOLANT_IN)
                                .heatW());
        assertThat(dropPa(seaLevelDrop(blocked), 5)).isGreaterThan(1.25 * dropPa(seaLevelDrop(road), 5));
        assertThat(blocked.coolantDropPa(0.002, coolant, 360)).isEqualTo(road.coolantDropPa(0.002, coolant, 360));
        assertThat(blocked.faceAreaM2()).isEqualTo(road.faceAreaM2());
    }

    @Test
    void factorsActOnTheirSide() {
        RadiatorSpec spec = road.spec();
        RadiatorPoint base = road.heat(1.7, AIR_IN, SEA_LEVEL, 0.002, coolant, COOLANT_IN);
        RadiatorPoint air = new Radiator(spec, new RadiatorFactors(1.1, 1, 1))
                .heat(1.7, AIR_IN, SEA_LEVEL, 0.002, coolant, COOLANT_IN);
        RadiatorPoint tube = new Radiator(spec, new RadiatorFactors(1, 1, 1.1))
                .heat(1.7, AIR_IN, SEA_LEVEL, 0.002, coolant, COOLANT_IN);
        assertThat(air.heatW()).isGreaterThan(tube.heatW());
        assertThat(tube.heatW()).isGreaterThan(base.heatW());
        Radiator rough = new Radiator(spec, new RadiatorFactors(1, 2, 1));
        assertThat(dropPa(seaLevelDrop(rough), 5))
                .isBetween(1.8 * dropPa(seaLevelDrop(road), 5), 2 * dropPa(seaLevelDrop(road), 5));
    }

    @Test
    void showsItsWorking() {
        List<WorkingLine> lines = road.working(1.7, AIR_IN, SEA_LEVEL, 0.002, coolant, COOLANT_IN);
        RadiatorPoint p = road.heat(1.7, AIR_IN, SEA_LEVEL, 0.002, coolant, COOLANT_IN);
        assertThat(lines).allSatisfy(l -> {
            assertThat(l.value()).isFinite();
            assertThat(l.source()).isNotBlank();
        });
        assertThat(lines).extracting(WorkingLine::symbol).contains("A_c", "j", "h_a", "Nu", "h_i", "UA", "NTU", "eps");
        assertThat(value(lines, "Q")).isEqualTo(p.heatW());
        CoreAreas a = road.areas();
        double ha = value(lines, "h_a")
                * FinEfficiency.ofSurface(a.air().finAreaM2() / a.air().areaM2(), p.finEfficiency())
                * a.air().areaM2();
        assertThat(p.conductanceWPerK() / ha).isCloseTo(p.airSideResistanceShare(), within(1e-5));
        assertThat(road.working(0, AIR_IN, SEA_LEVEL, 0.002, coolant, COOLANT_IN))
                .isNotEmpty();
    }

    private static double value(List<WorkingLine> lines, String symbol) {
        return lines.stream()
                .filter(l -> l.symbol().equals(symbol))
                .findFirst()
                .orElseThrow()
                .value();
    }

    @Test
    void notesAndSpread() {
        RadiatorPoint p = road.heat(1.7, AIR_IN, SEA_LEVEL, 0.002, coolant, COOLANT_IN);
        assertThat(road.notes(p)).isEmpty();
        assertThat(road.spread(p, road.notes(p)).airSide()).isCloseTo(0.10, within(1e-12));
        assertThat(road.spread(p, road.notes(p)).tubeSide()).isEqualTo(0.08);
        Radiator deep = Cores.radiator(Cores.twoRows(), 1);
        RadiatorPoint slow = deep.heat(0.1, AIR_IN, SEA_LEVEL, 0.002, coolant, COOLANT_IN);
        assertThat(deep.notes(slow)).extracting(Note::field).containsExactly("coreDepthM", "louverReynolds");
        assertThat(deep.spread(slow, deep.notes(slow)).airSide()).isCloseTo(0.15, within(1e-12));
    }

    @Test
    void refusesWhatNoCoreCanBe() {
        assertThatThrownBy(() -> Cores.louvered(0.65, 0.40, 0.026, 1, 0, 0.0002))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new RadiatorSpec(Cores.road(), TankPlacement.SIDES, 4, 0, true))
                .isInstanceOf(OutOfRangeException.class);
        CoreGeometry tooDeep = Cores.louvered(0.65, 0.40, 0.035, 2, 0.002, 0.00127);
        assertThatThrownBy(() -> Cores.radiator(tooDeep, 1)).isInstanceOf(OutOfRangeException.class);
    }
}
