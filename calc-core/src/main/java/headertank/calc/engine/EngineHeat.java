package headertank.calc.engine;

import headertank.calc.fluid.Fuel;
import headertank.calc.quantity.Note;
import headertank.calc.quantity.NoteText;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Physics;
import headertank.calc.quantity.Range;
import headertank.calc.quantity.WorkedQuantity;
import headertank.calc.quantity.WorkingLine;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.util.FastMath;

/**
 * Energy balance of an engine: from brake power and speed to the heat in coolant and oil.
 *
 * <ol>
 *   <li>Friction with gas exchange at full throttle {@code P_f = k_f k_t k_c (0.97 + 0.15 N + 0.05 N^2) 1e5 V_d n/2}, N in
 *       1000 rev/min, n rev/s: the fit of Barnes-Moss (1975) in J. B. Heywood, <i>Internal Combustion Engine
 *       Fundamentals</i>, 1988, eq. 13.6 (from memory); k_f = 0.85 for modern rings and oils, k_t for a turbocharger, k_c for
 *       cold oil (modelling choices). The square term is gas exchange, the rest, P_r, rubs.
 *   <li>A throttled engine also pumps against the vacuum that its throttle makes, {@code P_t = (p_a - p_m) V_d n/2}. The charge
 *       says what p_m must be: {@code p_m V_d n/2 = m_air R T_m/VE}, T_m 310 K and VE 0.85 or what the charge at full
 *       load asks for if that is less (modelling choices), so that with air per joule of fuel known P_t is linear in the fuel,
 *       and nothing at full load (derived). Diesels have no throttle.
 *   <li>Released heat {@code Q_rel = (P_b + P_f + P_t)/eta_g}.
 *   <li>Fuel power {@code Q_fuel = Q_rel/eta_c}, eta_c = 0.98 min(1, lambda) for spark ignition (a rich mixture lacks
 *       oxygen; derived), 0.985 for diesel. Spark ignition runs at lambda 1 below 60 % load and blends to the fuel's
 *       full-load value at 90 %; a diesel at {@code lambda_full/load}, at most 6 (modelling choices).
 *   <li>Coolant {@code phi Q_rel + psi_c P_r + t_x Q_rel}, {@code phi = (x^-8 + m^-8)^(-1/8)} of {@code x = phi_g K_fuel
 *       (Q_rel/Q_rel,rated)^-0.25}: wall heat grows as flow^0.75 (C. F. Taylor, <i>The Internal Combustion Engine in Theory and
 *       Practice</i>, 1985, from memory), so its share falls as flow^-0.25, and it can not pass m, which is what work, oil and
 *       the exhaust leave of it: at idle gas passes the ports at 350 to 450 C (from memory), which is 0.14 of the heat at least
 *       (derived; the power 8 a modelling choice). So what is not known of the exponent counts for little at idle: nearly all
 *       that is not in the exhaust is in the engine.
 *   <li>Oil {@code phi_o Q_rel + psi_o P_r}; misc {@code P_f + P_t - (psi_c + psi_o) P_r + 0.02 Q_rel}; exhaust is the rest.
 * </ol>
 *
 * <p>A measured brake efficiency replaces eta_g by solving steps 2 and 3 at rated power. Above 50 % load an exhaust share
 * outside 0.25 to 0.50 of the fuel leaves a {@link Note} that widens the uncertainty 1.5 times.
 */
public final class EngineHeat {

    private static final double MODERN_FRICTION = 0.85;
    private static final double MISC_SHARE = 0.02;
    private static final double WALL_SHARE_MOST = 0.42;
    private static final double LEAST_EXHAUST = 0.14;
    private static final double AIR_GAS_CONSTANT = 287.05;
    private static final double MANIFOLD_K = 310;
    private static final double VOLUMETRIC_EFFICIENCY = 0.85;
    private static final Range EXHAUST = Range.of(0.25, 0.50);
    private static final Range SPEED_SHARE = Range.of(0, 1.3);
    private static final Range POWER_SHARE = Range.of(0, 1.5);
    private static final Range COLD_FRICTION = Range.of(1, 10);

    private final EngineSpec spec;
    private final EngineClass kind;
    private final EngineFactors factors;
    private final double grossEfficiency;
    private final double ratedReleasedW;
    private final double wallShare;
    private final double wallExponent;
    private final double mostWall;
    private final double mostWall8;
    private final List<Note> specNotes;

    /**
     * @param spec the engine
     * @param factors factors on the uncertain shares
     */
    public EngineHeat(EngineSpec spec, EngineFactors factors) {
        this.spec = spec;
        this.kind = spec.engineClass();
        this.factors = factors;
        double ratedGross = spec.ratedPowerW() + frictionW(spec.ratedSpeedPerS());
        Range possible =
                Range.of(0.12, 1 - WALL_SHARE_MOST - kind.oilShare() - kind.turbineHousingShare() - MISC_SHARE - 0.02);
        double asked = kind.grossEfficiency();
        if (spec.measuredBrakeEfficiency().isPresent()) {
            asked = spec.measuredBrakeEfficiency().getAsDouble()
                    * ratedGross
                    / (spec.ratedPowerW() * combustionEfficiency(lambda(1)));
        }
        this.grossEfficiency = possible.clamp(asked);
        this.specNotes = grossEfficiency == asked
                ? List.of()
                : List.of(new Note(
                        "measuredBrakeEfficiency",
                        asked,
                        possible,
                        Note.Action.CLAMPED,
                        1.5,
                        NoteText.EFFICIENCY_LEAVES_NO_EXHAUST.with()));
        this.ratedReleasedW = ratedGross / grossEfficiency;
        this.mostWall = Math.max(
                0.05, 1 - grossEfficiency - kind.oilShare() - kind.turbineHousingShare() - MISC_SHARE - LEAST_EXHAUST);
        this.mostWall8 = FastMath.pow(mostWall, -8);
        this.wallExponent = -(0.25 + factors.loadExponent());
        this.wallShare = kind.wallShare() * factors.coolantShare() * spec.fuel().coolantFactor() * factors.fuelHeat();
    }

    /** @return the engine that this balance was made for */
    public EngineSpec spec() {
        return spec;
    }

    /**
     * @param speedPerS crankshaft speed [rev/s], 0 to 1.3 times rated
     * @return friction power and that of gas exchange at full throttle, with warm oil [W]
     */
    public double frictionW(double speedPerS) {
        double n = requireSpeed(speedPerS);
        double thousands = n * 60 / 1000;
        return frictionPer(n, 0.97 + 0.15 * thousands + 0.05 * thousands * thousands);
    }

    /** The part of it that rubs, and so ends in oil and coolant [W]. */
    private double rubbingW(double speedPerS) {
        return frictionPer(speedPerS, 0.97 + 0.15 * speedPerS * 60 / 1000);
    }

    private double frictionPer(double n, double bar) {
        return MODERN_FRICTION * kind.boostFriction() * factors.friction() * bar * 1e5 * spec.displacementM3() * n / 2;
    }

    /**
     * @param speedPerS crankshaft speed [rev/s], 0 to 1.3 times rated
     * @return brake power at full throttle [W] by the class's torque curve (modelling choice); rated power at rated speed
     */
    public double fullLoadPowerW(double speedPerS) {
        double u = requireSpeed(speedPerS) / spec.ratedSpeedPerS();
        return spec.ratedPowerW() * u * kind.torqueShare(u);
    }

    /** The balance with fuel burning, oil and engine warm; see {@link #at(double, double, double)}. */
    public HeatSplit at(double brakePowerW, double speedPerS) {
        return at(brakePowerW, speedPerS, 1);
    }

    /**
     * The balance with fuel burning.
     *
     * @param brakePowerW power at the crankshaft with accessories [W], 0 to 1.5 times rated; power above the torque curve
     *     is taken as stated and counts as full load
     * @param speedPerS crankshaft speed [rev/s], above 0 to 1.3 times rated; 0 only with no power: the engine is off
     * @param coldFriction what rubs over what it rubs with warm oil, 1 to 10 [-]; see {@link ColdEngine}
     * @return where the fuel's power goes
     */
    public HeatSplit at(double brakePowerW, double speedPerS, double coldFriction) {
        OutOfRangeException.require(
                "brakePowerW",
                brakePowerW,
                POWER_SHARE.min() * spec.ratedPowerW(),
                POWER_SHARE.max() * spec.ratedPowerW());
        OutOfRangeException.require("coldFriction", coldFriction, COLD_FRICTION);
        double warm = frictionW(speedPerS);
        if (speedPerS == 0) {
            OutOfRangeException.require("brakePowerW", brakePowerW, 0, 0);
            return new HeatSplit(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, specNotes);
        }
        double rubbing = coldFriction * rubbingW(speedPerS);
        double friction = warm + (coldFriction - 1) * rubbingW(speedPerS);
        double load = Math.min(1, brakePowerW / fullLoadPowerW(speedPerS));
        double lambda = lambda(load);
        double combustion = combustionEfficiency(lambda);
        double shaft = brakePowerW + friction;
        double released = shaft / grossEfficiency;
        double throttling = 0;
        double airPerJoule =
                spec.fuel().stoichiometricAirFuelRatio() / spec.fuel().lowerHeatingValueJPerKg();
        if (!kind.isDiesel()) {
            double atmosphere = Physics.STANDARD_PRESSURE_PA * spec.displacementM3() * speedPerS / 2;
            double unthrottled = (fullLoadPowerW(speedPerS) + warm) / grossEfficiency;
            double manifold = Math.max(
                    AIR_GAS_CONSTANT * MANIFOLD_K / VOLUMETRIC_EFFICIENCY * lambda * airPerJoule / combustion,
                    atmosphere / unthrottled);
            double throttled = (shaft + atmosphere) / (grossEfficiency + manifold);
            if (throttled > released) {
                throttling = throttled * grossEfficiency - shaft;
                released = throttled;
            }
        }
        double fuel = released / combustion;
        double coolant =
                (wallShareAt(released) + kind.turbineHousingShare()) * released + kind.frictionToCoolant() * rubbing;
        double oil = kind.oilShare() * released + kind.frictionToOil() * rubbing;
        double misc = friction
                + throttling
                - (kind.frictionToCoolant() + kind.frictionToOil()) * rubbing
                + MISC_SHARE * released;
        double unburnt = fuel - released;
        double exhaust = fuel - brakePowerW - coolant - oil - misc - unburnt;
        double fuelMass = fuel / spec.fuel().lowerHeatingValueJPerKg();
        double air = lambda * airPerJoule * fuel;
        return new HeatSplit(
                fuel,
                brakePowerW,
                coolant,
                oil,
                exhaust,
                unburnt,
                misc,
                friction,
                throttling,
                released,
                load,
                lambda,
                air,
                air + fuelMass,
                notes(load, exhaust / fuel));
    }

    /**
     * @param h a balance of this engine with fuel burning
     * @return what coolant and oil would take of it if the exhaust left no hotter than at idle, 0.14 of the heat [W]
     */
    public double mostToCoolantAndOilW(HeatSplit h) {
        return h.coolantW() + h.oilW() + (mostWall - wallShareAt(h.releasedW())) * h.releasedW();
    }

    /**
     * Overrun with the fuel cut: the car drives the engine and only friction heats it. The pumped air's own cooling is
     * left out (modelling choice, errs to the hot side).
     *
     * @param speedPerS crankshaft speed [rev/s], 0 to 1.3 times rated
     * @return the balance, with brake power negative
     */
    public HeatSplit overrun(double speedPerS) {
        double f = frictionW(speedPerS);
        double rubbing = rubbingW(speedPerS);
        double coolant = kind.frictionToCoolant() * rubbing;
        double oil = kind.frictionToOil() * rubbing;
        return new HeatSplit(0, -f, coolant, oil, 0, 0, f - coolant - oil, f, 0, 0, 0, 0, 0, 0, specNotes);
    }

    /**
     * Time mean over the modes of a duty; {@code lambda} and {@code loadShare} are means over the time that fuel burns.
     *
     * @param modes at least one, with a positive sum of time shares
     * @return the mean balance with the notes of all modes
     */
    public HeatSplit meanOver(List<EngineMode> modes) {
        double time = 0;
        double burning = 0;
        double[] sum = new double[14];
        List<Note> notes = new ArrayList<>(specNotes);
        for (EngineMode m : modes) {
            double speed = m.speedShare() * spec.ratedSpeedPerS();
            HeatSplit h = m.powerShare() == 0 ? overrun(speed) : at(m.powerShare() * spec.ratedPowerW(), speed);
            double w = m.timeShare();
            time += w;
            burning += h.fuelW() > 0 ? w : 0;
            double[] terms = {
                h.fuelW(),
                h.brakeW(),
                h.coolantW(),
                h.oilW(),
                h.exhaustW(),
                h.unburntW(),
                h.miscW(),
                h.frictionW(),
                h.throttlingW(),
                h.releasedW(),
                h.airMassKgPerS(),
                h.chargeMassKgPerS(),
                h.loadShare(),
                h.lambda()
            };
            for (int i = 0; i < terms.length; i++) {
                sum[i] += w * terms[i];
            }
            h.notes().stream().filter(n -> !notes.contains(n)).forEach(notes::add);
        }
        if (!(time > 0)) {
            throw new OutOfRangeException("sum of timeShare", time, Range.of(Double.MIN_VALUE, modes.size() + 1.0));
        }
        for (int i = 0; i < 12; i++) {
            sum[i] /= time;
        }
        double load = burning > 0 ? sum[12] / burning : 0;
        double lambda = burning > 0 ? sum[13] / burning : 0;
        return new HeatSplit(
                sum[0], sum[1], sum[2], sum[3], sum[4], sum[5], sum[6], sum[7], sum[8], sum[9], load, lambda, sum[10],
                sum[11], notes);
    }

    /**
     * Heat that the charge cooler gives to the air, part of which passes the radiator behind it: {@code m_air 1006 dT}.
     *
     * @param split the balance at the operating point
     * @param chargeDropK temperature drop of the charge in its cooler [K], 0 to 250; see
     *     {@link EngineClass#chargeCoolerDropK()}
     * @return heat [W]
     */
    public static double chargeCoolerW(HeatSplit split, double chargeDropK) {
        OutOfRangeException.require("chargeDropK", chargeDropK, 0, 250);
        return split.airMassKgPerS() * 1006.0 * chargeDropK;
    }

    /**
     * @param h a result of {@link #at}
     * @return how it came about, line by line
     */
    public List<WorkingLine> working(HeatSplit h) {
        Fuel fuel = spec.fuel();
        String choice = "modelling choice";
        String balance = "derived, energy balance";
        return List.of(
                new WorkingLine(WorkedQuantity.BRAKE_POWER, "P_b", "W", h.brakeW(), "input"),
                new WorkingLine(
                        WorkedQuantity.FRICTION_AND_GAS_EXCHANGE,
                        "P_f",
                        "W",
                        h.frictionW(),
                        "Barnes-Moss 1975 in Heywood 1988, eq. 13.6, from memory"),
                new WorkingLine(WorkedQuantity.WORK_AGAINST_THE_THROTTLE, "P_t", "W", h.throttlingW(), "derived"),
                new WorkingLine(WorkedQuantity.GROSS_INDICATED_EFFICIENCY, "eta_g", "-", grossEfficiency, choice),
                new WorkingLine(WorkedQuantity.LOAD_SHARE, "load", "-", h.loadShare(), choice),
                new WorkingLine(WorkedQuantity.MIXTURE, "lambda", "-", h.lambda(), choice),
                new WorkingLine(WorkedQuantity.FUEL_FACTOR, "K_fuel", "-", fuel.coolantFactor(), "derived"),
                new WorkingLine(WorkedQuantity.RELEASED_HEAT, "Q_rel", "W", h.releasedW(), balance),
                new WorkingLine(WorkedQuantity.FUEL_POWER, "Q_fuel", "W", h.fuelW(), balance),
                new WorkingLine(
                        WorkedQuantity.WALL_SHARE,
                        "phi",
                        "-",
                        h.releasedW() > 0 ? wallShareAt(h.releasedW()) : 0,
                        choice),
                new WorkingLine(WorkedQuantity.HEAT_TO_COOLANT, "Q_cool", "W", h.coolantW(), choice),
                new WorkingLine(WorkedQuantity.HEAT_TO_OIL, "Q_oil", "W", h.oilW(), choice),
                new WorkingLine(WorkedQuantity.UNBURNT, "Q_unburnt", "W", h.unburntW(), balance),
                new WorkingLine(WorkedQuantity.RADIATION_AND_FRICTION_REST, "Q_misc", "W", h.miscW(), choice),
                new WorkingLine(WorkedQuantity.EXHAUST, "Q_exh", "W", h.exhaustW(), balance),
                new WorkingLine(WorkedQuantity.BALANCE_RESIDUAL, "dQ", "W", h.residualW(), balance));
    }

    private double wallShareAt(double releasedW) {
        double x = wallShare * FastMath.pow(releasedW / ratedReleasedW, wallExponent);
        double x2 = x * x;
        double x4 = x2 * x2;
        return 1 / FastMath.sqrt(FastMath.sqrt(FastMath.sqrt(1 / (x4 * x4) + mostWall8)));
    }

    private double lambda(double load) {
        double full = spec.fuel().fullLoadLambda();
        if (kind.isDiesel()) {
            return Math.min(6, full / Math.max(load, 1e-3));
        }
        return 1 + (full - 1) * Math.max(0, Math.min(1, (load - 0.6) / 0.3));
    }

    private double combustionEfficiency(double lambda) {
        return kind.isDiesel() ? 0.985 : 0.98 * Math.min(1, lambda);
    }

    private double requireSpeed(double speedPerS) {
        return OutOfRangeException.require("speedPerS", speedPerS, 0, SPEED_SHARE.max() * spec.ratedSpeedPerS());
    }

    private List<Note> notes(double load, double exhaustShare) {
        if (load <= 0.5 || EXHAUST.contains(exhaustShare)) {
            return specNotes;
        }
        List<Note> all = new ArrayList<>(specNotes);
        all.add(new Note(
                "exhaustShare",
                exhaustShare,
                EXHAUST,
                Note.Action.WIDENED,
                1.5,
                NoteText.EXHAUST_SHARE_UNUSUAL.with()));
        return all;
    }
}
