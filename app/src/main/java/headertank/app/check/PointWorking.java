package headertank.app.check;

import headertank.calc.quantity.WorkingLine;
import headertank.calc.rating.Balance;
import headertank.calc.rating.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Writes down a steady balance line by line, each quantity with the kind of source that stands behind it. */
final class PointWorking {

    private static final String ENERGY = "energy balance, derived";
    private static final String SOLVED = "solved balance of air, coolant and heat";
    private static final String ENGINE = "heat split of the engine's class";
    private static final String AIR = "one-dimensional losses and fan laws, derived";
    private static final String CIRCUIT = "pump against circuit, derived";
    private static final String CORE = "exact cross-flow series, both streams unmixed (Mason 1955, from memory)";
    private static final String CHOICE = "modelling choice";
    private static final String FIELD = "in the sense of SAE J1393, solved";
    private static final String LINEAR = "linear formula in the sense of SAE J1393";

    private final List<WorkingLine> lines = new ArrayList<>();

    private PointWorking() {}

    static List<WorkingLine> lines(Balance.Steady s, Optional<Figures> figures) {
        PointWorking w = new PointWorking();
        w.heat(s);
        w.air(s);
        w.coolant(s);
        w.core(s);
        w.electric(s);
        w.closing(s);
        figures.ifPresent(w::figures);
        return w.lines;
    }

    private void heat(Balance.Steady s) {
        add("fuel flow times heating value", "P_fuel", "W", s.heat().fuelW(), ENGINE);
        add("power at the crankshaft", "P_b", "W", s.heat().brakeW(), "demand of the duty");
        add("heat to the coolant from the engine", "Q_eng", "W", s.heat().coolantW(), ENGINE);
        add("heat to the oil", "Q_oil", "W", s.heat().oilW(), ENGINE);
        add("heat in the exhaust", "Q_ex", "W", s.heat().exhaustW(), ENERGY);
        add("fuel that leaves unburnt", "Q_ub", "W", s.heat().unburntW(), ENERGY);
        add(
                "radiation, accessories, rest of the friction",
                "Q_misc",
                "W",
                s.heat().miscW(),
                ENERGY);
        add("friction and pumping, part of the above", "P_f", "W", s.heat().frictionW(), ENGINE);
        add("load as a share of full throttle", "x", "-", s.heat().loadShare(), "derived");
        add("air-fuel ratio over the stoichiometric", "lambda", "-", s.heat().lambda(), CHOICE);
        add("air through the engine", "m_eng", "kg/s", s.heat().airMassKgPerS(), "derived");
        add("heat from oil to coolant", "Q_oc", "W", s.oilToCoolantW(), "balance of the oil, derived");
        add("heat from hoses and block to the air", "Q_s", "W", s.surfaceHeatW(), CHOICE);
        add("heat through the radiator", "Q_rad", "W", s.radiatorHeatW(), SOLVED);
        add("oil", "T_oil", "K", s.oilK(), "balance of the oil, derived");
    }

    private void air(Balance.Steady s) {
        add("air around the car", "T_a", "K", s.ambientK(), "design ambient and duty");
        add("air entering the core", "T_ai", "K", s.airInK(), "recirculation and coolers in front, modelling choice");
        add("air leaving the core", "T_ao", "K", s.airOutK(), ENERGY);
        add("air through the core", "m_a", "kg/s", s.airMassKgPerS(), AIR);
        add("face velocity", "v_f", "m/s", s.faceVelocityMPerS(), AIR);
        add("duty of the fans", "d", "-", s.fanDuty(), "fan control at this temperature");
        add("fan speed over its speed at 13 V", "N/N_13", "-", s.fanSpeedFactor(), "fan laws, from memory");
    }

    private void coolant(Balance.Steady s) {
        add("coolant leaving the engine", "T_h", "K", s.engineOutK(), SOLVED);
        add("coolant leaving the radiator", "T_c", "K", s.radiatorOutK(), ENERGY);
        add("flow through the pump", "Q_p", "m3/s", s.pumpM3PerS(), CIRCUIT);
        add("flow through the radiator", "Q_r", "m3/s", s.radiatorM3PerS(), CIRCUIT);
        add("coolant pressure drop of the radiator", "dp_r", "Pa", s.radiatorDropPa(), CIRCUIT);
        add("pressure rise of the pump", "dp_p", "Pa", s.pumpRisePa(), "pump curve, modelling choice");
        add("pressure drop across the thermostat", "dp_t", "Pa", s.thermostatDropPa(), CIRCUIT);
        add("thermostat lift", "l", "-", s.lift(), CHOICE);
        add("boiling point at the cap", "T_sat", "K", s.boilingK(), "vapour pressure at cap pressure and altitude");
        add("pressure at the pump inlet above its need", "NPSH-NPSH_r", "Pa", s.pumpInletMarginPa(), CHOICE);
    }

    private void core(Balance.Steady s) {
        add("conductance of the core", "UA", "W/K", s.conductanceWPerK(), "sum of resistances, derived");
        add("transfer units", "NTU", "-", s.ntu(), "UA over the smaller capacity rate");
        add("ratio of capacity rates", "C_r", "-", s.capacityRatio(), "derived");
        add("effectiveness", "eps", "-", s.effectiveness(), CORE);
        add("share of the air side in the resistance", "R_a/R", "-", s.airSideShare(), "derived");
        add("Reynolds number in the tubes", "Re", "-", s.tubeReynolds(), "derived");
    }

    private void electric(Balance.Steady s) {
        add("current of all electric fans", "I_fan", "A", s.fanCurrentA(), "stated current and fan laws");
        add("fans and everything else", "I_load", "A", s.loadA(), "sum");
        add("alternator at this speed", "I_alt", "A", s.availableA(), CHOICE);
        add("voltage at the fans", "V", "V", s.batteryV(), "common practice, no source");
    }

    private void closing(Balance.Steady s) {
        add("left of the heat balance", "r_Q", "W", s.residualW(), "solver");
        add("the same as a share of the heat", "r_Q/Q", "-", s.residualShare(), "solver");
        add("left of the air balance", "r_p", "Pa", s.airResidualPa(), "solver");
        add("left of the coolant balance", "r_c", "Pa", s.coolantResidualPa(), "solver");
        add("evaluations that the solver needed", "n", "-", s.evaluations(), "solver");
    }

    private void figures(Figures f) {
        add("coolant margin", "T_lim-T_h", "K", f.coolantMarginK(), "derived");
        add("oil margin", "T_oil,lim-T_oil", "K", f.oilMarginK(), "derived");
        add("boiling margin of the bulk", "T_sat-T_h", "K", f.boilingMarginK(), "derived");
        add("limiting ambient", "LAT", "K", f.limitingAmbientK(), FIELD);
        add("limiting ambient, linear", "LAT_lin", "K", f.limitingAmbientLinearK(), LINEAR);
        add("air to boil, as an ambient", "ATB", "K", f.boilingAmbientK(), FIELD);
        add("air to boil, linear", "ATB_lin", "K", f.boilingAmbientLinearK(), LINEAR);
        add("inlet temperature difference", "ITD", "K", f.inletDifferenceK(), "derived");
        add("specific dissipation", "Q/ITD", "W/K", f.specificDissipationWPerK(), "derived");
        add("approach of the coolant", "T_c-T_ai", "K", f.coolantApproachK(), "derived");
    }

    private void add(String quantity, String symbol, String unit, double value, String source) {
        lines.add(new WorkingLine(quantity, symbol, unit, value, source));
    }
}
