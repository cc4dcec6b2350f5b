package headertank.calc.rating;

import headertank.calc.air.AirConditions;
import headertank.calc.carspec.BuildField;
import headertank.calc.choice.FanDrive;
import headertank.calc.control.FanController;
import headertank.calc.coolant.BoilingMargin;
import headertank.calc.coolant.CapPosition;
import headertank.calc.coolant.HeadWall;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.fluid.Coolant;
import headertank.calc.oil.OilBalance;
import headertank.calc.quantity.WorkedPart;
import headertank.calc.quantity.WorkedQuantity;
import headertank.calc.quantity.WorkingLine;
import headertank.calc.quantity.WorkingSection;
import headertank.calc.result.Balance;
import headertank.calc.result.Figures;
import headertank.calc.sensor.SensorMount;
import headertank.calc.sensor.SensorReading;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes down how a car's figures at one operating point came about, in the order of computation: from the engine's fuel
 * to the margins. Every component tells its own part, at the state that the steady solver found. Without a steady state
 * the working ends at what the point asks of the car. A figure that is infinite (no ambient reaches the limit) has no line.
 */
public final class PointWorking {

    private static final String DERIVED = "derived";
    private static final String CHOICE = "modelling choice";

    private static final double JACKET_M_PER_S = 2.5;
    private static final double JACKET_WIDTH_M = 0.010;
    private static final double FLUX_W_PER_M2 = 1e6;

    private final Plant plant;
    private final OperatingPoint point;
    private final List<WorkingSection> sections = new ArrayList<>();

    private PointWorking(Plant plant, OperatingPoint point) {
        this.plant = plant;
        this.point = point;
    }

    /** @return the working of the point for this car, section by section */
    public static List<WorkingSection> of(Plant plant, OperatingPoint point) {
        return new PointWorking(plant, point).sections();
    }

    private List<WorkingSection> sections() {
        SteadySolver solver = new SteadySolver(plant, point);
        Balance balance = solver.solve();
        asked(solver);
        add(WorkedPart.HEAT_OF_THE_ENGINE, plant.engine().working(solver.load().heat()));
        if (balance instanceof Balance.Steady s) {
            add(WorkedPart.COOLANT_FLOW, solver.coolantFlow().working());
            coolant(s);
            fans(solver, s);
            AirConditions air = solver.air().conditions(s.ambientK());
            add(
                    WorkedPart.AIR_THROUGH_THE_CORE,
                    plant.airPath().working(air, solver.air().flow()));
            add(
                    WorkedPart.RADIATOR,
                    plant.radiator()
                            .working(
                                    s.air().massKgPerS(),
                                    s.air().inK(),
                                    plant.atmospherePa(),
                                    s.coolant().radiatorM3PerS(),
                                    plant.coolant(),
                                    s.engineOutK()));
            oil(solver, s);
            balance(s);
            pressures(solver, s);
            headWall(solver, s);
            sensors(s);
            figures(s);
        }
        return List.copyOf(sections);
    }

    private void asked(SteadySolver solver) {
        PointLoad load = solver.load();
        add(
                WorkedPart.WHAT_THE_POINT_ASKS,
                List.of(
                        line(WorkedQuantity.AIR_AROUND_THE_CAR, "T_a", "K", solver.designAmbientK(), "build and duty"),
                        line(
                                WorkedQuantity.PRESSURE_OF_THE_AIR,
                                "p_a",
                                "Pa",
                                plant.atmospherePa(),
                                "ISO 2533 at the altitude"),
                        line(WorkedQuantity.ROAD_SPEED, "V", "m/s", point.roadSpeedMPerS(), "duty"),
                        line(WorkedQuantity.SIDESLIP, "beta", "rad", point.yawRad(), "duty"),
                        line(WorkedQuantity.ENGINE_SPEED, "n", "1/s", load.engineSpeedPerS(), "duty"),
                        line(WorkedQuantity.PUMP_SPEED_OVER_RATED, "n_p", "-", load.pumpSpeedShare(), DERIVED),
                        line(WorkedQuantity.HEAT_BEFORE_CORE, "Q_up", "W", load.upstreamW(), CHOICE)));
    }

    private void coolant(Balance.Steady s) {
        Coolant c = plant.coolant();
        double t = s.engineOutK();
        add(
                WorkedPart.COOLANT,
                List.of(
                        line(
                                WorkedQuantity.THERMOSTAT_LIFT,
                                "s",
                                "-",
                                s.coolant().lift(),
                                "0.006 + 0.994 z^2 (3 - 2 z), " + CHOICE),
                        line(WorkedQuantity.MASS_SHARE_OF_GLYCOL, "x", "-", c.glycolMassFraction(), "build"),
                        line(WorkedQuantity.OUTLET_DENSITY, "rho", "kg/m3", c.densityKgPerM3(t), c.source()),
                        line(WorkedQuantity.HEAT_CAPACITY_THERE, "cp", "J/kgK", c.heatCapacityJPerKgK(t), c.source()),
                        line(WorkedQuantity.VISCOSITY_THERE, "mu", "Pa s", c.viscosityPaS(t), c.source()),
                        line(WorkedQuantity.CONDUCTIVITY_THERE, "k", "W/mK", c.conductivityWPerMK(t), c.source())));
    }

    private void fans(SteadySolver solver, Balance.Steady s) {
        List<WorkingLine> lines = new ArrayList<>();
        if (plant.fanDrive() == FanDrive.ELECTRIC) {
            double sensed = SensorReading.steadyK(
                    plant.fanSensor(),
                    s.engineOutK(),
                    s.coolant().radiatorOutK(),
                    s.ambientK(),
                    s.coolant().radiatorM3PerS());
            lines.addAll(FanController.working(sensed, s.air().fanDuty()));
        } else if (plant.fanDrive() == FanDrive.CLUTCH) {
            lines.add(line(WorkedQuantity.AIR_AT_CLUTCH, "T_ao", "K", s.air().outK(), "steady balance"));
            lines.add(
                    line(WorkedQuantity.CLUTCH_SPEED_RATIO, "slip", "-", s.air().fanDuty(), CHOICE));
        }
        lines.add(line(WorkedQuantity.FAN_SPEED_RATIO, "N/N_0", "-", s.air().fanSpeedFactor(), "N ~ V, from memory"));
        add(WorkedPart.FANS, lines);
        add(WorkedPart.CURRENT, solver.air().current().working());
    }

    private void oil(SteadySolver solver, Balance.Steady s) {
        add(
                WorkedPart.OIL,
                OilBalance.of(solver.oil(), solver.load().oilW(), s.engineOutK(), s.ambientK())
                        .working());
    }

    private void balance(Balance.Steady s) {
        double given = s.core().heatW() + s.surfaceHeatW();
        add(
                WorkedPart.STEADY_BALANCE,
                List.of(
                        line(
                                WorkedQuantity.AIR_ENTERING_THE_CORE,
                                "T_in",
                                "K",
                                s.air().inK(),
                                "preheat and recirculation, " + DERIVED),
                        line(
                                WorkedQuantity.AIR_LEAVING_THE_CORE,
                                "T_out",
                                "K",
                                s.air().outK(),
                                DERIVED),
                        line(
                                WorkedQuantity.HEAT_THROUGH_THE_RADIATOR,
                                "Q_rad",
                                "W",
                                s.core().heatW(),
                                DERIVED),
                        line(
                                WorkedQuantity.BLOCK_AND_HOSE_HEAT,
                                "Q_s",
                                "W",
                                s.surfaceHeatW(),
                                "UA_s (T_h - T_uh), " + CHOICE),
                        line(WorkedQuantity.HEAT_GIVEN_OFF, "Q_rad + Q_s", "W", given, DERIVED),
                        line(
                                WorkedQuantity.HEAT_TAKEN_UP,
                                "Q_cool + Q_oc",
                                "W",
                                given - s.residuals().heatW(),
                                DERIVED),
                        line(
                                WorkedQuantity.COOLANT_LEAVING_THE_ENGINE,
                                "T_h",
                                "K",
                                s.engineOutK(),
                                "root of the heat balance"),
                        line(
                                WorkedQuantity.COOLANT_LEAVING_THE_RADIATOR,
                                "T_c",
                                "K",
                                s.coolant().radiatorOutK(),
                                DERIVED),
                        line(
                                WorkedQuantity.HEAT_BALANCE_REST,
                                "F",
                                "W",
                                s.residuals().heatW(),
                                DERIVED),
                        line(
                                WorkedQuantity.HEAT_BALANCE_REST_SHARE,
                                "F/Q",
                                "-",
                                s.residuals().heatShare(),
                                DERIVED),
                        line(
                                WorkedQuantity.AIR_BALANCE_REST,
                                "dp",
                                "Pa",
                                s.residuals().airPa(),
                                DERIVED),
                        line(
                                WorkedQuantity.COOLANT_BALANCE_REST,
                                "dp",
                                "Pa",
                                s.residuals().coolantPa(),
                                DERIVED),
                        line(
                                WorkedQuantity.HEAT_BALANCE_EVALUATIONS,
                                "-",
                                "-",
                                s.residuals().evaluations(),
                                "bracketed root")));
    }

    private void pressures(SteadySolver solver, Balance.Steady s) {
        add(
                WorkedPart.BOILING,
                BoilingMargin.of(s.engineOutK(), plant.atmospherePa(), plant.cap(), p -> s.boilingK())
                        .working());
        double vapour = plant.coolant().vapourPressurePa(s.coolant().radiatorOutK());
        List<WorkingLine> lines = new ArrayList<>();
        lines.add(line(
                WorkedQuantity.RETURN_VAPOUR_PRESSURE,
                "p_v",
                "Pa",
                vapour,
                plant.coolant().source()));
        lines.addAll(solver.pumpInlet().working());
        add(WorkedPart.PUMP_INLET, lines);
    }

    /**
     * The head's wall, where boiling begins. Velocity and heat flux are modelling choices: {@link #JACKET_M_PER_S} at half of
     * the pump's largest flow, {@link #FLUX_W_PER_M2} at rated power, both in proportion. No section where the coolant is too
     * slow for the correlation.
     */
    private void headWall(SteadySolver solver, Balance.Steady s) {
        Coolant c = plant.coolant();
        double t = s.engineOutK();
        double velocity =
                JACKET_M_PER_S * s.coolant().pumpM3PerS() / (0.5 * plant.pump().maxFlowM3PerS());
        double rated = plant.engine()
                .at(plant.engine().spec().ratedPowerW(), plant.engine().spec().ratedSpeedPerS())
                .coolantW();
        HeadWall.Jacket jacket = new HeadWall.Jacket(
                t,
                velocity,
                JACKET_WIDTH_M,
                c.densityKgPerM3(t),
                c.viscosityPaS(t),
                c.heatCapacityJPerKgK(t),
                c.conductivityWPerMK(t));
        if (jacket.densityKgPerM3() * velocity * JACKET_WIDTH_M / jacket.viscosityPaS() < HeadWall.LEAST_REYNOLDS) {
            return;
        }
        double flux = FLUX_W_PER_M2 * solver.load().coolantW() / rated;
        double pressure = HeadWall.pressurePa(plant.capPressurePa(), CapPosition.HOT_TANK, solver.coolantFlow());
        List<WorkingLine> lines = new ArrayList<>();
        lines.add(line(WorkedQuantity.JACKET_VELOCITY, "v", "m/s", velocity, CHOICE));
        lines.add(line(WorkedQuantity.HOTTEST_WALL_FLUX, "q", "W/m2", flux, "1e6 at rated power, from memory"));
        lines.add(line(
                WorkedQuantity.PRESSURE_IN_THE_HEAD,
                "p_h",
                "Pa",
                pressure,
                "cap, thermostat and half the hoses, " + DERIVED));
        lines.addAll(HeadWall.of(jacket, flux, pressure, c::boilingK).working());
        add(WorkedPart.WALL_OF_THE_HEAD, lines);
    }

    private void sensors(Balance.Steady s) {
        add(
                WorkedPart.GAUGE,
                SensorReading.of(
                                plant.gaugeSensor(),
                                SensorMount.WETTED,
                                s.engineOutK(),
                                s.coolant().radiatorOutK(),
                                s.ambientK(),
                                s.coolant().radiatorM3PerS())
                        .working());
    }

    private void figures(Balance.Steady s) {
        Figures f = PointRater.rate(plant, point).figures().orElseThrow();
        List<WorkingLine> lines = new ArrayList<>();
        lines.add(line(
                WorkedQuantity.COOLANT_LIMIT,
                "T_lim",
                "K",
                plant.resolved().value(BuildField.COOLANT_LIMIT),
                "build or its class"));
        lines.add(line(WorkedQuantity.COOLANT_MARGIN, "T_lim - T_h", "K", f.coolantMarginK(), DERIVED));
        lines.add(line(WorkedQuantity.OIL_MARGIN, "T_o,lim - T_o", "K", f.oilMarginK(), DERIVED));
        lines.add(line(WorkedQuantity.BOILING_MARGIN, "T_sat - T_h", "K", f.boilingMarginK(), DERIVED));
        lines.add(line(WorkedQuantity.INLET_TEMPERATURE_DIFFERENCE, "ITD", "K", f.inletDifferenceK(), DERIVED));
        lines.add(line(WorkedQuantity.SPECIFIC_DISSIPATION, "Q/ITD", "W/K", f.specificDissipationWPerK(), DERIVED));
        lines.add(line(WorkedQuantity.APPROACH_OF_THE_COOLANT, "T_c - T_in", "K", f.coolantApproachK(), DERIVED));
        lines.add(line(
                WorkedQuantity.APPROACH_OF_THE_AIR,
                "T_h - T_out",
                "K",
                s.engineOutK() - s.air().outK(),
                DERIVED));
        bothWays(
                lines,
                List.of(
                        WorkedQuantity.LIMITING_AMBIENT_LINEAR,
                        WorkedQuantity.LIMITING_AMBIENT_SOLVED,
                        WorkedQuantity.LIMITING_AMBIENT_DIFFERENCE),
                "LAT",
                f.limitingAmbientLinearK(),
                f.limitingAmbientK());
        bothWays(
                lines,
                List.of(
                        WorkedQuantity.AIR_TO_BOIL_LINEAR,
                        WorkedQuantity.AIR_TO_BOIL_SOLVED,
                        WorkedQuantity.AIR_TO_BOIL_DIFFERENCE),
                "ATB",
                f.boilingAmbientLinearK(),
                f.boilingAmbientK());
        add(WorkedPart.FIGURES, lines);
    }

    private static void bothWays(
            List<WorkingLine> lines, List<WorkedQuantity> quantities, String symbol, double linearK, double solvedK) {
        lines.add(line(quantities.get(0), symbol, "K", linearK, "SAE J1393: ambient plus margin"));
        if (Double.isFinite(solvedK)) {
            lines.add(
                    line(quantities.get(1), symbol, "K", solvedK, "ambient at which the balance meets it, " + DERIVED));
            lines.add(line(quantities.get(2), symbol, "K", solvedK - linearK, DERIVED));
        }
    }

    private void add(WorkedPart title, List<WorkingLine> lines) {
        sections.add(new WorkingSection(title, lines));
    }

    private static WorkingLine line(WorkedQuantity quantity, String symbol, String unit, double value, String source) {
        return new WorkingLine(quantity, symbol, unit, value, source);
    }
}
