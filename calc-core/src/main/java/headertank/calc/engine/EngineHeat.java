package headertank.calc.engine;

import headertank.calc.fluid.Fuel;
import headertank.calc.quantity.Note;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;
import headertank.calc.quantity.WorkingLine;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.util.FastMath;

/**
 * Energy balance of an engine: from brake power and speed to the heat in coolant and oil.
 *
 * <ol>
 *   <li>Friction and pumping {@code P_f = k_f k_t (0.97 + 0.15 N + 0.05 N^2) 1e5 V_d n/2}, N in 1000 rev/min, n rev/s:
 *       the fit of Barnes-Moss (1975) in J. B. Heywood, <i>Internal Combustion Engine Fundamentals</i>, 1988, eq. 13.6
 *       (from memory); k_f = 0.85 for modern rings and oils, k_t for a turbocharger (modelling choices).
 *   <li>Released heat {@code Q_rel = (P_b + P_f)/eta_g}.
 *   <li>Fuel power {@code Q_fuel = Q_rel/eta_c}, eta_c = 0.98 min(1, lambda) for spark ignition (a rich mixture lacks
 *       oxygen; derived), 0.985 for diesel. Spark ignition runs at lambda 1 below 60 % load and blends to the fuel's
 *       full-load value at 90 %; a diesel at {@code lambda_full/load}, at most 6 (modelling choices).
 *   <li>Coolant {@code phi Q_rel + psi_c P_f + t_x Q_rel}, {@code phi = min(0.42, phi_g K_fuel (Q_rel/Q_rel,rated)^-0.25)}:
 *       wall heat grows as flow^0.75 (C. F. Taylor, <i>The Internal Combustion Engine in Theory and Practice</i>, 1985,
 *       from memory), so its share falls as flow^-0.25.
 *   <li>Oil {@code phi_o Q_rel + psi_o P_f}; misc {@code (1 - psi_c - psi_o) P_f + 0.02 Q_rel}; exhaust is the rest.
 * </ol>
 *
 * <p>A measured brake efficiency replaces eta_g by solving steps 2 and 3 at rated power. Above 50 % load an exhaust share
 * outside 0.25 to 0.50 of the fuel leaves a {@link Note} that widens the uncertainty 1.5 times.
 */
public final class EngineHeat {

    private static final double MODERN_FRICTION = 0.85;
    private static final double MISC_SHARE = 0.02;
    private static final double WALL_SHARE_MAX = 0.42;
    private static final Range EXHAUST = Range.of(0.25, 0.50);
    private static final Range SPEED_SHARE = Range.of(0, 1.3);
    private static final Range POWER_SHARE = Range.of(0, 1.5);

    private final EngineSpec spec;
    private final EngineClass kind;
    private final EngineFactors factors;
    private final double grossEfficiency;
    private final double ratedReleasedW;
    private final double wallShare;
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
                Range.of(0.12, 1 - WALL_SHARE_MAX - kind.oilShare() - kind.turbineHousingShare() - MISC_SHARE - 0.02);
        double asked = kind.grossEfficiency();
        if (spec.measuredBrakeEfficiency().isPresent()) {
            asked = spec.measuredBrakeEfficiency().getAsDouble()
                    * ratedGross
                    / (spec.ratedPowerW() * combustionEfficiency(lambda(1)));
        }
        this.grossEfficiency = possible.clamp(asked);
        this.specNotes = grossEfficiency == asked
                ? List.of()
                : List.of(
                        new Note(
                                "measuredBrakeEfficiency",
                                asked,
                                possible,
                                Note.Action.CLAMPED,
                                1.5,
                                "The measured efficiency asks for an indicated efficiency that leaves no heat for the exhaust."));
        this.ratedReleasedW = ratedGross / grossEfficiency;
        this.wallShare = kind.wallShare() * factors.coolantShare() * spec.fuel().coolantFactor() * factors.fuelHeat();
    }

    /** @return the engine that this balance was made for */
    public EngineSpec spec() {
        return spec;
    }

    /**
     * @param speedPerS crankshaft speed [rev/s], 0 to 1.3 times rated
     * @return friction and pumping power [W]
     */
    public double frictionW(double speedPerS) {
        double n = requireSpeed(speedPerS);
        double thousands = n * 60 / 1000;
        return MODERN_FRICTION
                * kind.boostFriction()
                * factors.friction()
                * (0.97 + 0.15 * thousands + 0.05 * thousands * thousands)
                * 1e5
                * spec.displacementM3()
                * n
                / 2;
    }

    /**
     * @param speedPerS crankshaft speed [rev/s], 0 to 1.3 times rated
     * @return brake power at full throttle [W] by the class's torque curve (modelling choice); rated power at rated speed
     */
    public double fullLoadPowerW(double speedPerS) {
        double u = requireSpeed(speedPerS) / spec.ratedSpeedPerS();
        return spec.ratedPowerW() * u * kind.torqueShare(u);
    }

    /**
     * The balance with fuel burning.
     *
     * @param brakePowerW power at the crankshaft with accessories [W], 0 to 1.5 times rated; power above the torque curve
     *     is taken as stated and counts as full load
     * @param speedPerS crankshaft speed [rev/s], above 0 to 1.3 times rated; 0 only with no power: the engine is off
     * @return where the fuel's power goes
     * @throws OutOfRangeException when power or speed lies outside its range
     */
    public HeatSplit at(double brakePowerW, double speedPerS) {
        OutOfRangeException.require(
                "brakePowerW",
                brakePowerW,
                Range.of(POWER_SHARE.min() * spec.ratedPowerW(), POWER_SHARE.max() * spec.ratedPowerW()));
        double friction = frictionW(speedPerS);
        if (speedPerS == 0) {
            OutOfRangeException.require("brakePowerW", brakePowerW, Range.of(0, 0));
            return new HeatSplit(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, specNotes);
        }
        double load = Math.min(1, brakePowerW / fullLoadPowerW(speedPerS));
        double lambda = lambda(load);
        double released = (brakePowerW + friction) / grossEfficiency;
        double fuel = released / combustionEfficiency(lambda);
        double coolant =
                (wallShareAt(released) + kind.turbineHousingShare()) * released + kind.frictionToCoolant() * friction;
        double oil = kind.oilShare() * released + kind.frictionToOil() * friction;
        double misc = (1 - kind.frictionToCoolant() - kind.frictionToOil()) * friction + MISC_SHARE * released;
        double unburnt = fuel - released;
        double exhaust = fuel - brakePowerW - coolant - oil - misc - unburnt;
        double fuelMass = fuel / spec.fuel().lowerHeatingValueJPerKg();
        double air = lambda * spec.fuel().stoichiometricAirFuelRatio() * fuelMass;
        return new HeatSplit(
                fuel,
                brakePowerW,
                coolant,
                oil,
                exhaust,
                unburnt,
                misc,
                friction,
                released,
                load,
                lambda,
                air,
                air + fuelMass,
                notes(load, exhaust / fuel));
    }

    /**
     * Idle with the class's usual accessories.
     *
     * @return the balance at idle speed
     */
    public HeatSplit idle() {
        return at(Math.min(kind.idlePowerW(), spec.ratedPowerW()), spec.idleSpeedPerS());
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
        double coolant = kind.frictionToCoolant() * f;
        double oil = kind.frictionToOil() * f;
        return new HeatSplit(0, -f, coolant, oil, 0, 0, f - coolant - oil, f, 0, 0, 0, 0, 0, specNotes);
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
        double[] sum = new double[13];
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
        for (int i = 0; i < 11; i++) {
            sum[i] /= time;
        }
        double load = burning > 0 ? sum[11] / burning : 0;
        double lambda = burning > 0 ? sum[12] / burning : 0;
        return new HeatSplit(
                sum[0], sum[1], sum[2], sum[3], sum[4], sum[5], sum[6], sum[7], sum[8], load, lambda, sum[9], sum[10],
                notes);
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
        OutOfRangeException.require("chargeDropK", chargeDropK, Range.of(0, 250));
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
                new WorkingLine("brake power", "P_b", "W", h.brakeW(), "input"),
                new WorkingLine(
                        "friction and pumping power",
                        "P_f",
                        "W",
                        h.frictionW(),
                        "Barnes-Moss 1975 in Heywood 1988, eq. 13.6, from memory"),
                new WorkingLine("gross indicated efficiency", "eta_g", "-", grossEfficiency, choice),
                new WorkingLine("load share", "load", "-", h.loadShare(), choice),
                new WorkingLine("mixture", "lambda", "-", h.lambda(), choice),
                new WorkingLine("fuel factor on coolant heat", "K_fuel", "-", fuel.coolantFactor(), "derived"),
                new WorkingLine("released heat", "Q_rel", "W", h.releasedW(), balance),
                new WorkingLine("fuel power", "Q_fuel", "W", h.fuelW(), balance),
                new WorkingLine("wall share", "phi", "-", h.releasedW() > 0 ? wallShareAt(h.releasedW()) : 0, choice),
                new WorkingLine("heat to coolant", "Q_cool", "W", h.coolantW(), choice),
                new WorkingLine("heat to oil", "Q_oil", "W", h.oilW(), choice),
                new WorkingLine("unburnt", "Q_unburnt", "W", h.unburntW(), balance),
                new WorkingLine("radiation and the rest of friction", "Q_misc", "W", h.miscW(), choice),
                new WorkingLine("exhaust", "Q_exh", "W", h.exhaustW(), balance),
                new WorkingLine("balance residual", "dQ", "W", h.residualW(), balance));
    }

    private double wallShareAt(double releasedW) {
        return Math.min(WALL_SHARE_MAX, wallShare / FastMath.sqrt(FastMath.sqrt(releasedW / ratedReleasedW)));
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
        return OutOfRangeException.require(
                "speedPerS", speedPerS, Range.of(0, SPEED_SHARE.max() * spec.ratedSpeedPerS()));
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
                "The exhaust share of the fuel lies outside what engines show; check power, fuel and efficiency."));
        return all;
    }
}
