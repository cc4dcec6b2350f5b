package headertank.calc.radiator;

import headertank.calc.choice.FinKind;
import headertank.calc.fluid.Air;
import headertank.calc.fluid.Coolant;
import headertank.calc.quantity.Note;
import headertank.calc.quantity.WorkingLine;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.util.FastMath;

/**
 * Heat and both pressure drops of a radiator.
 *
 * <p>1/UA = (1/(h_a eta_o) + R_fa)/A + R_b/A_foot + t_w/(k_w A_in) + (1/h_i + R_fc)/A_in, with h_a = j G cp Pr^(-2/3) of
 * the fins ({@link LouveredFins}, {@link PlainFins}), eta_o of {@link FinEfficiency}, h_i = Nu k/D of {@link TubeFlow};
 * then heat by {@link Passes} and {@link CrossFlow}. Properties are taken at the mean temperature of each stream, found
 * in turns until the heat moves by less than 1e-8 of itself: four or five turns as a rule, twenty at most.
 *
 * <p>A blocked share of the face carries neither air nor heat; the coolant still runs behind it.
 *
 * <p>Immutable and thread-safe; what depends on geometry alone is computed once, in the constructor.
 */
public final class Radiator {

    private static final double SETTLED = 1e-8;

    /** What a real, dented, dusty core adds to the spread of the fins' correlations [-]; modelling choice. */
    private static final double REAL_CORE = 0.06;

    private static final double[] FIT_SPEEDS = {1, 2, 3, 5, 8, 12};

    private final RadiatorSpec spec;
    private final RadiatorFactors factors;
    private final CoreAreas areas;
    private final AirSide fins;
    private final TubeFlow tubes;
    private final CoreHeat heat;

    private final double faceArea;
    private final double freeArea;
    private final double endLosses;
    private final double areaRatio;
    private final double passFlowArea;
    private final double diameter;
    private final double lengthOverDiameter;

    /** A radiator by the correlations as published. */
    public Radiator(RadiatorSpec spec) {
        this(spec, RadiatorFactors.NOMINAL);
    }

    /**
     * @param spec core and plumbing
     * @param factors multipliers on the correlations
     * @throws headertank.calc.quantity.OutOfRangeException when the core lies more than 20 % outside the range of the
     *     louvred-fin correlation
     */
    public Radiator(RadiatorSpec spec, RadiatorFactors factors) {
        this.spec = spec;
        this.factors = factors;
        CoreGeometry g = spec.geometry();
        this.areas = CoreAreas.of(g, spec.tanks(), spec.wholeTubes());
        this.fins = fins(g, areas);
        this.diameter = areas.tubes().hydraulicDiameterM();
        this.lengthOverDiameter = areas.tubes().lengthM() / diameter;
        this.tubes = new TubeFlow(
                areas.tubes().innerHeightM() / areas.tubes().innerWidthM(),
                1 / lengthOverDiameter,
                g.tubes().turbulated());
        double open = 1 - spec.blockedFaceShare();
        this.faceArea = g.face().areaM2();
        this.freeArea = areas.air().freeAreaM2() * open;
        double sigma = areas.air().freeShare();
        this.endLosses = 0.42 * (1 - sigma * sigma) + (1 - sigma) * (1 - sigma);
        this.areaRatio = areas.air().areaM2() / areas.air().freeAreaM2();
        this.passFlowArea = areas.tubes().flowAreaM2() / spec.passes();
        this.heat = new CoreHeat(spec, factors, areas, fins, tubes);
    }

    private static AirSide fins(CoreGeometry g, CoreAreas a) {
        if (g.fins().kind() == FinKind.PLAIN) {
            return new PlainFins(g.fins().pitchM(), g.fins().thicknessM(), a.depthM());
        }
        return new LouveredFins(
                g.fins().pitchM(),
                g.fins().heightM(),
                a.depthM(),
                g.fins().louvers().pitchM(),
                g.fins().louvers().angleDeg(),
                g.fins().louvers().lengthM(),
                g.fins().thicknessM(),
                g.tubes().heightM(),
                a.air().hydraulicDiameterM());
    }

    /** @return core and plumbing */
    public RadiatorSpec spec() {
        return spec;
    }

    /** @return multipliers on the correlations */
    public RadiatorFactors factors() {
        return factors;
    }

    /** @return the core's areas, without the blocked share */
    public CoreAreas areas() {
        return areas;
    }

    /** @return the whole finned face, blocked share included [m2] */
    public double faceAreaM2() {
        return faceArea;
    }

    /**
     * The core's drop, {@link #airDropPa}, as a curve of face velocity at inlet density, fitted to least relative squares at
     * 1, 2, 3, 5, 8 and 12 m/s.
     *
     * @param airInK air entering [K]
     * @param airOutK air leaving [K]
     * @param pressurePa static pressure [Pa]
     * @return the curve, within about 6 % of the formula
     */
    public AirDrop airDrop(double airInK, double airOutK, double pressurePa) {
        double rho = Air.densityKgPerM3(pressurePa, airInK, 0);
        double mu = Air.viscosityPaS(0.5 * (airInK + airOutK));
        double heating = 0.5 * (1 + airOutK / airInK);
        double s11 = 0;
        double s12 = 0;
        double s22 = 0;
        double r1 = 0;
        double r2 = 0;
        for (double v : FIT_SPEEDS) {
            double dp = heating * dropPa(rho * v * faceArea, rho, mu);
            double x = v / dp;
            double y = v * x;
            s11 += x * x;
            s12 += x * y;
            s22 += y * y;
            r1 += x;
            r2 += y;
        }
        double det = s11 * s22 - s12 * s12;
        return new AirDrop((r1 * s22 - r2 * s12) / det, (s11 * r2 - s12 * r1) / det);
    }

    /** G^2/(2 rho) (K_c + K_e + f A/A_c) for a mass flow through the core. */
    private double dropPa(double airMassKgPerS, double rho, double mu) {
        double g = airMassKgPerS / freeArea;
        double re = g * fins.reynoldsLengthM() / mu;
        double f = factors.airFriction() * fins.friction(re);
        return g * g / (2 * rho) * (endLosses + f * areaRatio);
    }

    /**
     * Drop of the core: dp = G^2/(2 rho) (K_c + K_e + f A/A_c) (1 + rho_i/rho_o)/2, K_c = 0.42 (1 - sigma^2), K_e = (1 -
     * sigma)^2, sigma = free area over face (from memory); rho the inlet density, f at the mean temperature.
     *
     * @param airMassKgPerS air mass flow, negative for backflow [kg/s]
     * @param airInK air entering [K]
     * @param airOutK air leaving [K]
     * @param pressurePa static pressure [Pa]
     * @return pressure drop, of the sign of the flow [Pa]
     */
    public double airDropPa(double airMassKgPerS, double airInK, double airOutK, double pressurePa) {
        if (airMassKgPerS == 0) {
            return 0;
        }
        double rhoIn = Air.densityKgPerM3(pressurePa, airInK, 0);
        double mu = Air.viscosityPaS(0.5 * (airInK + airOutK));
        double drop = dropPa(Math.abs(airMassKgPerS), rhoIn, mu) * 0.5 * (1 + airOutK / airInK);
        return airMassKgPerS > 0 ? drop : -drop;
    }

    /**
     * Coolant drop: per pass 0.5 rho v^2 (f L/D + 1.5), the 1.5 for entry and exit of the tubes, summed over the passes.
     *
     * @param flowM3PerS coolant flow, negative for backflow [m3/s]
     * @param coolant the coolant
     * @param temperatureK its mean temperature [K]
     * @return pressure drop, of the sign of the flow [Pa]
     */
    public double coolantDropPa(double flowM3PerS, Coolant coolant, double temperatureK) {
        if (flowM3PerS == 0) {
            return 0;
        }
        return coolantDropPa(flowM3PerS, coolant.densityKgPerM3(temperatureK), coolant.viscosityPaS(temperatureK));
    }

    /** @return {@link #coolantDropPa(double, Coolant, double)} of a liquid of known density and viscosity [Pa] */
    public double coolantDropPa(double flowM3PerS, double densityKgPerM3, double viscosityPaS) {
        if (flowM3PerS == 0) {
            return 0;
        }
        double v = flowM3PerS / passFlowArea;
        double re = densityKgPerM3 * Math.abs(v) * diameter / viscosityPaS;
        double f = tubes.friction(re);
        return spec.passes() * 0.5 * densityKgPerM3 * v * Math.abs(v) * (f * lengthOverDiameter + 1.5);
    }

    /**
     * Heat at an operating point. Without air or without coolant flow the heat is zero, see {@link RadiatorPoint}.
     *
     * @param airMassKgPerS air mass flow, at least 0 [kg/s]
     * @param airInK air entering [K]
     * @param pressurePa static pressure, for the face velocity only [Pa]
     * @param coolantFlowM3PerS coolant flow at its mean temperature in the radiator, at least 0 [m3/s]
     * @param coolant the coolant
     * @param coolantInK coolant entering [K]
     * @return heat, outlet temperatures and how they came about
     */
    public RadiatorPoint heat(
            double airMassKgPerS,
            double airInK,
            double pressurePa,
            double coolantFlowM3PerS,
            Coolant coolant,
            double coolantInK) {
        return heat(airMassKgPerS, airInK, pressurePa, coolantFlowM3PerS, coolant, coolantInK, SETTLED);
    }

    RadiatorPoint heat(
            double airMassKgPerS,
            double airInK,
            double pressurePa,
            double coolantFlowM3PerS,
            Coolant coolant,
            double coolantInK,
            double settled) {
        if (Double.isNaN(airMassKgPerS + airInK + coolantFlowM3PerS + coolantInK)) {
            throw new IllegalArgumentException("an operating point needs numbers");
        }
        double difference = coolantInK - airInK;
        return heat(
                airInK + 0.25 * difference,
                coolantInK - 0.05 * difference,
                settled,
                airMassKgPerS,
                airInK,
                pressurePa,
                coolantFlowM3PerS,
                coolant,
                coolantInK);
    }

    /** Heat from properties at these temperatures on, in turns until they are settled; zero without air or coolant. */
    private RadiatorPoint heat(
            double airMeanK,
            double coolantMeanK,
            double settled,
            double airMassKgPerS,
            double airInK,
            double pressurePa,
            double coolantFlowM3PerS,
            Coolant coolant,
            double coolantInK) {
        if (airMassKgPerS <= 0) {
            return RadiatorPoint.withoutAir(coolantInK);
        }
        double face = airMassKgPerS / (Air.densityKgPerM3(pressurePa, airInK, 0) * faceArea);
        if (coolantFlowM3PerS <= 0) {
            return RadiatorPoint.withoutCoolant(airInK, face);
        }
        return heat.settle(
                airMeanK, coolantMeanK, settled, airMassKgPerS, airInK, face, coolantFlowM3PerS, coolant, coolantInK);
    }

    /**
     * Heat with the properties of both streams at given temperatures: one turn of {@link #heat}, for a caller that takes
     * turns of its own about more than the radiator.
     *
     * @param airMeanK temperature of the air's properties [K]
     * @param coolantMeanK temperature of the coolant's properties [K]
     * @param airMassKgPerS as in {@link #heat}
     * @param airInK as in {@link #heat}
     * @param pressurePa as in {@link #heat}
     * @param coolantFlowM3PerS as in {@link #heat}
     * @param coolant the coolant
     * @param coolantInK as in {@link #heat}
     * @return the operating point as far as these temperatures are right
     */
    public RadiatorPoint heatWithPropertiesAt(
            double airMeanK,
            double coolantMeanK,
            double airMassKgPerS,
            double airInK,
            double pressurePa,
            double coolantFlowM3PerS,
            Coolant coolant,
            double coolantInK) {
        return heat(
                airMeanK,
                coolantMeanK,
                Double.POSITIVE_INFINITY,
                airMassKgPerS,
                airInK,
                pressurePa,
                coolantFlowM3PerS,
                coolant,
                coolantInK);
    }

    /**
     * Heat against coolant flow at a fixed air flow and fixed inlet temperatures: it rises and flattens, while the
     * temperature drop of the coolant falls.
     *
     * @param flowsM3PerS coolant flows [m3/s]
     * @return one line per flow
     */
    public List<FlowPoint> heatAgainstCoolantFlow(
            List<Double> flowsM3PerS,
            double airMassKgPerS,
            double airInK,
            double pressurePa,
            Coolant coolant,
            double coolantInK) {
        List<FlowPoint> lines = new ArrayList<>(flowsM3PerS.size());
        for (double flow : flowsM3PerS) {
            RadiatorPoint p = heat(airMassKgPerS, airInK, pressurePa, flow, coolant, coolantInK);
            lines.add(new FlowPoint(
                    flow,
                    p.heatW(),
                    coolantInK - p.coolantOutK(),
                    coolantDropPa(flow, coolant, 0.5 * (coolantInK + p.coolantOutK())),
                    p.tubeReynolds(),
                    p.tubeRegime()));
        }
        return List.copyOf(lines);
    }

    /** @return what the sources do not cover of this core and of this operating point */
    public List<Note> notes(RadiatorPoint point) {
        List<Note> notes = new ArrayList<>(fins.geometryNotes());
        if (point.louverReynolds() > 0) {
            notes.addAll(fins.flowNotes(point.louverReynolds()));
        }
        return List.copyOf(notes);
    }

    /**
     * One standard deviation of the three {@link RadiatorFactors}: the correlations' own spread, for the air side a further
     * 6 % for a real, dented, dusty core (modelling choice), that of the air side widened by the notes.
     *
     * @param point the operating point that decides
     * @param notes what the sources do not cover of this core and point, {@link #notes(RadiatorPoint)} or more
     */
    public RadiatorSpread spread(RadiatorPoint point, List<Note> notes) {
        double widening = 1;
        for (Note n : notes) {
            widening = Math.max(widening, n.widening());
        }
        return new RadiatorSpread(
                widening * FastMath.hypot(fins.colburnSpread(), REAL_CORE),
                widening * FastMath.hypot(fins.frictionSpread(), REAL_CORE),
                point.tubeRegime().coefficientSpread());
    }

    /** @return each intermediate quantity of an operating point, with symbol, unit, value and source */
    public List<WorkingLine> working(
            double airMassKgPerS,
            double airInK,
            double pressurePa,
            double coolantFlowM3PerS,
            Coolant coolant,
            double coolantInK) {
        RadiatorPoint p = heat(airMassKgPerS, airInK, pressurePa, coolantFlowM3PerS, coolant, coolantInK);
        return new RadiatorWorking(this, fins, tubes)
                .lines(p, airMassKgPerS, airInK, pressurePa, coolantFlowM3PerS, coolant, coolantInK);
    }
}
