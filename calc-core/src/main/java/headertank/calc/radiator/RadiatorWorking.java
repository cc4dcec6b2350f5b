package headertank.calc.radiator;

import headertank.calc.fluid.Air;
import headertank.calc.fluid.Coolant;
import headertank.calc.quantity.TubeRegime;
import headertank.calc.quantity.WorkedQuantity;
import headertank.calc.quantity.WorkingLine;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.util.FastMath;

/** Writes down how a radiator's heat came about. */
final class RadiatorWorking {

    private static final String GEOMETRY = "derived from the core's geometry";
    private static final String DERIVED = "derived";

    private final Radiator radiator;
    private final AirSide fins;
    private final TubeFlow tubes;

    RadiatorWorking(Radiator radiator, AirSide fins, TubeFlow tubes) {
        this.radiator = radiator;
        this.fins = fins;
        this.tubes = tubes;
    }

    List<WorkingLine> lines(
            RadiatorPoint p,
            double airMassKgPerS,
            double airInK,
            double pressurePa,
            double coolantFlowM3PerS,
            Coolant coolant,
            double coolantInK) {
        List<WorkingLine> w = new ArrayList<>();
        geometry(w);
        if (p.conductanceWPerK() > 0) {
            air(w, p, airMassKgPerS, airInK, pressurePa);
            tube(w, p, coolantFlowM3PerS, coolant, coolantInK);
        }
        w.add(line(
                WorkedQuantity.CONDUCTANCE_OF_THE_CORE,
                "UA",
                "W/K",
                p.conductanceWPerK(),
                "sum of resistances, derived"));
        w.add(line(WorkedQuantity.TRANSFER_UNITS, "NTU", "-", p.ntu(), "UA over the smaller capacity rate"));
        w.add(line(WorkedQuantity.RATIO_OF_CAPACITY_RATES, "C_r", "-", p.capacityRatio(), DERIVED));
        w.add(line(
                WorkedQuantity.EFFECTIVENESS,
                "eps",
                "-",
                p.effectiveness(),
                "exact series for both streams unmixed (Mason 1955, from memory), passes side by side derived"));
        w.add(line(WorkedQuantity.HEAT_TO_THE_AIR, "Q", "W", p.heatW(), DERIVED));
        w.add(line(WorkedQuantity.COOLANT_LEAVING, "T_c", "K", p.coolantOutK(), DERIVED));
        w.add(line(WorkedQuantity.AIR_LEAVING, "T_ao", "K", p.airOutK(), DERIVED));
        return List.copyOf(w);
    }

    private void geometry(List<WorkingLine> w) {
        CoreAreas a = radiator.areas();
        w.add(line(WorkedQuantity.FACE, "W H", "m2", radiator.faceAreaM2(), GEOMETRY));
        w.add(line(WorkedQuantity.TUBES_IN_A_ROW, "N_t", "-", a.tubes().perRow(), GEOMETRY));
        w.add(line(WorkedQuantity.AIR_SIDE_AREA, "A", "m2", a.air().areaM2(), GEOMETRY));
        w.add(line(WorkedQuantity.SMALLEST_FREE_AREA, "A_c", "m2", a.air().freeAreaM2(), GEOMETRY));
        w.add(line(
                WorkedQuantity.HYDRAULIC_DIAMETER_AIR_SIDE, "D_h", "m", a.air().hydraulicDiameterM(), GEOMETRY));
        w.add(line(
                WorkedQuantity.HYDRAULIC_DIAMETER_TUBE, "D_hi", "m", a.tubes().hydraulicDiameterM(), GEOMETRY));
        w.add(line(WorkedQuantity.TUBE_INNER_AREA, "A_in", "m2", a.tubes().areaM2(), GEOMETRY));
    }

    private void air(List<WorkingLine> w, RadiatorPoint p, double airMassKgPerS, double airInK, double pressurePa) {
        double mean = 0.5 * (airInK + p.airOutK());
        double cp = Air.heatCapacityJPerKgK(mean);
        double pr = Air.viscosityPaS(mean) * cp / Air.conductivityWPerMK(mean);
        double j = fins.colburn(p.louverReynolds(), pr);
        double g = airMassKgPerS
                / (radiator.areas().air().freeAreaM2() * (1 - radiator.spec().blockedFaceShare()));
        double ha = radiator.factors().airSide() * j * g * cp / FastMath.pow(pr, 2.0 / 3.0);
        w.add(line(WorkedQuantity.VELOCITY_BEFORE_FACE, "v_f", "m/s", p.faceVelocityMPerS(), DERIVED));
        w.add(line(WorkedQuantity.FIN_REYNOLDS, "Re_a", "-", p.louverReynolds(), DERIVED));
        w.add(line(WorkedQuantity.COLBURN_FACTOR, "j", "-", j, fins.colburnSource()));
        w.add(line(WorkedQuantity.AIR_SIDE_COEFFICIENT, "h_a", "W/m2K", ha, "j G cp Pr^(-2/3)"));
        w.add(line(WorkedQuantity.FIN_EFFICIENCY, "eta_f", "-", p.finEfficiency(), "tanh(m l)/(m l), textbook"));
        w.add(line(
                WorkedQuantity.FRICTION_FACTOR_AIR_SIDE,
                "f",
                "-",
                fins.friction(p.louverReynolds()),
                fins.frictionSource()));
        w.add(line(
                WorkedQuantity.PRESSURE_DROP_AIR_SIDE,
                "dp_a",
                "Pa",
                radiator.airDropPa(airMassKgPerS, airInK, p.airOutK(), pressurePa),
                "G^2/(2 rho)(K_c + K_e + f A/A_c) with the heating of the air, from memory"));
        w.add(line(WorkedQuantity.AIR_SIDE_RESISTANCE_SHARE, "-", "-", p.airSideResistanceShare(), DERIVED));
    }

    private void tube(
            List<WorkingLine> w, RadiatorPoint p, double coolantFlowM3PerS, Coolant coolant, double coolantInK) {
        double mean = 0.5 * (coolantInK + p.coolantOutK());
        double k = coolant.conductivityWPerMK(mean);
        double pr = coolant.viscosityPaS(mean) * coolant.heatCapacityJPerKgK(mean) / k;
        double nu = tubes.nusselt(p.tubeReynolds(), pr);
        double v = coolantFlowM3PerS
                * radiator.spec().passes()
                / radiator.areas().tubes().flowAreaM2();
        w.add(line(WorkedQuantity.TUBE_VELOCITY, "v", "m/s", v, DERIVED));
        w.add(line(WorkedQuantity.COOLANT_VISCOSITY, "mu", "Pa s", coolant.viscosityPaS(mean), coolant.source()));
        w.add(line(WorkedQuantity.TUBE_REYNOLDS, "Re", "-", p.tubeReynolds(), DERIVED));
        w.add(line(WorkedQuantity.COOLANT_PRANDTL, "Pr", "-", pr, coolant.source()));
        w.add(line(WorkedQuantity.TUBE_NUSSELT, "Nu", "-", nu, tubeSource(p.tubeRegime())));
        w.add(line(
                WorkedQuantity.TUBE_SIDE_COEFFICIENT,
                "h_i",
                "W/m2K",
                radiator.factors().tubeSide()
                        * nu
                        * k
                        / radiator.areas().tubes().hydraulicDiameterM(),
                "Nu k/D"));
        w.add(line(
                WorkedQuantity.PRESSURE_DROP_COOLANT_SIDE,
                "dp_c",
                "Pa",
                radiator.coolantDropPa(coolantFlowM3PerS, coolant, mean),
                "0.5 rho v^2 (f L/D + 1.5) per pass; Petukhov 1970, Shah and London 1978"));
    }

    private static String tubeSource(TubeRegime regime) {
        return switch (regime) {
            case LAMINAR -> "Shah and London 1978 with the entry term of two plates (form of Hausen), from memory";
            case TRANSITION -> "linear in Re between laminar and turbulent (Gnielinski 2013, from memory)";
            case TURBULENT -> "Gnielinski, Int. Chem. Eng. 16 (1976) 359-368";
        };
    }

    private static WorkingLine line(WorkedQuantity quantity, String symbol, String unit, double value, String source) {
        return new WorkingLine(quantity, symbol, unit, value, source);
    }
}
