package headertank.calc.radiator;

import headertank.calc.fluid.Air;
import headertank.calc.fluid.Coolant;
import org.hipparchus.util.FastMath;

/** The heat side of a {@link Radiator}: resistances, effectiveness, and the mean temperatures at which properties hold. */
final class CoreHeat {

    private static final int MOST_TURNS = 20;

    private final RadiatorFactors factors;
    private final AirSide fins;
    private final TubeFlow tubes;
    private final int passes;
    private final double freeArea;
    private final double airArea;
    private final double finShare;
    private final double finM2;
    private final double finL;
    private final double airFouling;
    private final double wallAndBond;
    private final double tubeArea;
    private final double tubeFouling;
    private final double passFlowArea;
    private final double diameter;

    CoreHeat(RadiatorSpec spec, RadiatorFactors factors, CoreAreas areas, AirSide fins, TubeFlow tubes) {
        CoreGeometry g = spec.geometry();
        double open = 1 - spec.blockedFaceShare();
        this.factors = factors;
        this.fins = fins;
        this.tubes = tubes;
        this.passes = spec.passes();
        this.freeArea = areas.air().freeAreaM2() * open;
        this.airArea = areas.air().areaM2() * open;
        this.finShare = areas.air().finAreaM2() / areas.air().areaM2();
        this.finM2 = 2
                / (g.fins().conductivityWPerMK() * g.fins().thicknessM())
                * (1 + g.fins().thicknessM() / areas.depthM());
        this.finL = g.fins().heightM() / 2 - g.fins().thicknessM();
        this.airFouling = g.resistances().airFoulingM2KPerW() / airArea;
        this.tubeArea = areas.tubes().areaM2() * open;
        this.wallAndBond = g.resistances().bondM2KPerW() / (areas.air().finFootAreaM2() * open)
                + g.tubes().wallM() / (g.tubes().conductivityWPerMK() * tubeArea);
        this.tubeFouling = g.resistances().coolantFoulingM2KPerW() / tubeArea;
        this.passFlowArea = areas.tubes().flowAreaM2() / passes;
        this.diameter = areas.tubes().hydraulicDiameterM();
    }

    /**
     * Takes turns from first mean temperatures on; written as one loop so that only the result is allocated.
     *
     * @param firstAirMeanK mean air temperature of the first turn [K]
     * @param firstCoolantMeanK mean coolant temperature of the first turn [K]
     * @param settled share of the heat by which assumed and computed heat may differ; infinite for one turn [-]
     * @param faceVelocityMPerS passed on to the result [m/s]
     */
    RadiatorPoint settle(
            double firstAirMeanK,
            double firstCoolantMeanK,
            double settled,
            double airMassKgPerS,
            double airInK,
            double faceVelocityMPerS,
            double coolantFlowM3PerS,
            Coolant coolant,
            double coolantInK) {
        double massVelocity = airMassKgPerS / freeArea;
        double tubeVelocity = coolantFlowM3PerS / passFlowArea;
        double airMeanK = firstAirMeanK;
        double coolantMeanK = firstCoolantMeanK;
        double earlier = Double.NaN;
        double earlierMiss = Double.NaN;
        double assumed = Double.NaN;
        for (int turn = 1; ; turn++) {
            double airCp = Air.heatCapacityJPerKgK(airMeanK);
            double airMu = Air.viscosityPaS(airMeanK);
            double airPr = airMu * airCp / Air.conductivityWPerMK(airMeanK);
            double finRe = massVelocity * fins.reynoldsLengthM() / airMu;
            double third = FastMath.cbrt(airPr);
            double ha = factors.airSide() * fins.colburn(finRe, airPr) * massVelocity * airCp / (third * third);
            double etaFin = FinEfficiency.ofProduct(FastMath.sqrt(finM2 * ha) * finL);
            double airSide = 1 / (ha * FinEfficiency.ofSurface(finShare, etaFin) * airArea) + airFouling;

            double rho = coolant.densityKgPerM3(coolantMeanK);
            double cp = coolant.heatCapacityJPerKgK(coolantMeanK);
            double mu = coolant.viscosityPaS(coolantMeanK);
            double k = coolant.conductivityWPerMK(coolantMeanK);
            double tubeRe = rho * tubeVelocity * diameter / mu;
            double hi = factors.tubeSide() * tubes.nusselt(tubeRe, mu * cp / k) * k / diameter;
            double ua = 1 / (airSide + wallAndBond + 1 / (hi * tubeArea) + tubeFouling);

            double airCapacity = airMassKgPerS * airCp;
            double coolantCapacity = rho * coolantFlowM3PerS * cp;
            double perKelvin = Passes.heatPerKelvin(passes, ua, airCapacity, coolantCapacity);
            double heat = perKelvin * (coolantInK - airInK);
            double miss = heat - assumed;
            if (Math.abs(miss) <= settled * Math.abs(heat)
                    || settled == Double.POSITIVE_INFINITY
                    || turn == MOST_TURNS) {
                double smaller = Math.min(airCapacity, coolantCapacity);
                return new RadiatorPoint(
                        heat,
                        coolantInK - heat / coolantCapacity,
                        airInK + heat / airCapacity,
                        ua,
                        ua / smaller,
                        smaller / Math.max(airCapacity, coolantCapacity),
                        perKelvin / smaller,
                        airSide * ua,
                        tubeRe,
                        tubes.regime(tubeRe),
                        etaFin,
                        faceVelocityMPerS,
                        finRe);
            }
            double next = turn < 3 ? heat : secant(earlier, earlierMiss, assumed, miss);
            airMeanK = airInK + 0.5 * next / airCapacity;
            coolantMeanK = coolantInK - 0.5 * next / coolantCapacity;
            earlier = assumed;
            earlierMiss = miss;
            assumed = next;
        }
    }

    /** Next heat to try: the secant through two misses, kept between the assumed and the computed heat. */
    private static double secant(double earlier, double earlierMiss, double assumed, double miss) {
        double computed = assumed + miss;
        double slope = (miss - earlierMiss) / (assumed - earlier);
        double next = assumed - miss / slope;
        double low = Math.min(assumed, computed);
        double high = Math.max(assumed, computed);
        return next >= low && next <= high ? next : computed;
    }
}
