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
        add("Heat of the engine", plant.engine().working(solver.load().heat()));
        if (balance instanceof Balance.Steady s) {
            add("Coolant flow", solver.coolantFlow().working());
            coolant(s);
            fans(solver, s);
            AirConditions air = solver.air().conditions(s.ambientK());
            add(
                    "Air through the core",
                    plant.airPath().working(air, solver.air().flow()));
            add(
                    "Radiator",
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
                "What the point asks",
                List.of(
                        line("air around the car", "T_a", "K", solver.designAmbientK(), "build and duty"),
                        line("pressure of the air", "p_a", "Pa", plant.atmospherePa(), "ISO 2533 at the altitude"),
                        line("road speed", "V", "m/s", point.roadSpeedMPerS(), "duty"),
                        line("sideslip", "beta", "rad", point.yawRad(), "duty"),
                        line("engine speed", "n", "1/s", load.engineSpeedPerS(), "duty"),
                        line("pump speed over rated", "n_p", "-", load.pumpSpeedShare(), DERIVED),
                        line("heat given to the air before the core", "Q_up", "W", load.upstreamW(), CHOICE)));
    }

    private void coolant(Balance.Steady s) {
        Coolant c = plant.coolant();
        double t = s.engineOutK();
        add(
                "Coolant",
                List.of(
                        line("thermostat lift", "s", "-", s.coolant().lift(), "0.006 + 0.994 z^2 (3 - 2 z), " + CHOICE),
                        line("mass share of glycol", "x", "-", c.glycolMassFraction(), "build"),
                        line("density at the engine's outlet", "rho", "kg/m3", c.densityKgPerM3(t), c.source()),
                        line("heat capacity there", "cp", "J/kgK", c.heatCapacityJPerKgK(t), c.source()),
                        line("viscosity there", "mu", "Pa s", c.viscosityPaS(t), c.source()),
                        line("conductivity there", "k", "W/mK", c.conductivityWPerMK(t), c.source())));
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
            lines.add(line(
                    "air behind the core at the clutch", "T_ao", "K", s.air().outK(), "steady balance"));
            lines.add(line("blade speed over pulley speed", "slip", "-", s.air().fanDuty(), CHOICE));
        }
        lines.add(line("fan speed over reference speed", "N/N_0", "-", s.air().fanSpeedFactor(), "N ~ V, from memory"));
        add("Fans", lines);
        add("Current", solver.air().current().working());
    }

    private void oil(SteadySolver solver, Balance.Steady s) {
        add(
                "Oil",
                OilBalance.of(solver.oil(), solver.load().oilW(), s.engineOutK(), s.ambientK())
                        .working());
    }

    private void balance(Balance.Steady s) {
        double given = s.core().heatW() + s.surfaceHeatW();
        add(
                "Steady balance",
                List.of(
                        line(
                                "air entering the core",
                                "T_in",
                                "K",
                                s.air().inK(),
                                "preheat and recirculation, " + DERIVED),
                        line("air leaving the core", "T_out", "K", s.air().outK(), DERIVED),
                        line("heat through the radiator", "Q_rad", "W", s.core().heatW(), DERIVED),
                        line("heat from block and hoses", "Q_s", "W", s.surfaceHeatW(), "UA_s (T_h - T_uh), " + CHOICE),
                        line("heat given off", "Q_rad + Q_s", "W", given, DERIVED),
                        line(
                                "heat taken up",
                                "Q_cool + Q_oc",
                                "W",
                                given - s.residuals().heatW(),
                                DERIVED),
                        line("coolant leaving the engine", "T_h", "K", s.engineOutK(), "root of the heat balance"),
                        line(
                                "coolant leaving the radiator",
                                "T_c",
                                "K",
                                s.coolant().radiatorOutK(),
                                DERIVED),
                        line("left of the heat balance", "F", "W", s.residuals().heatW(), DERIVED),
                        line(
                                "the same over the heat to the coolant",
                                "F/Q",
                                "-",
                                s.residuals().heatShare(),
                                DERIVED),
                        line(
                                "left of the air balance",
                                "dp",
                                "Pa",
                                s.residuals().airPa(),
                                DERIVED),
                        line(
                                "left of the coolant balance",
                                "dp",
                                "Pa",
                                s.residuals().coolantPa(),
                                DERIVED),
                        line(
                                "evaluations of the heat balance",
                                "-",
                                "-",
                                s.residuals().evaluations(),
                                "bracketed root")));
    }

    private void pressures(SteadySolver solver, Balance.Steady s) {
        add(
                "Boiling",
                BoilingMargin.of(s.engineOutK(), plant.atmospherePa(), plant.cap(), p -> s.boilingK())
                        .working());
        double vapour = plant.coolant().vapourPressurePa(s.coolant().radiatorOutK());
        List<WorkingLine> lines = new ArrayList<>();
        lines.add(line(
                "vapour pressure of the coolant that returns",
                "p_v",
                "Pa",
                vapour,
                plant.coolant().source()));
        lines.addAll(solver.pumpInlet().working());
        add("Pump inlet", lines);
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
        lines.add(line("velocity in the head's jacket", "v", "m/s", velocity, CHOICE));
        lines.add(line("heat flux at the hottest wall", "q", "W/m2", flux, "1e6 at rated power, from memory"));
        lines.add(
                line("pressure in the head", "p_h", "Pa", pressure, "cap, thermostat and half the hoses, " + DERIVED));
        lines.addAll(HeadWall.of(jacket, flux, pressure, c::boilingK).working());
        add("Wall of the head", lines);
    }

    private void sensors(Balance.Steady s) {
        add(
                "Gauge",
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
                "coolant limit", "T_lim", "K", plant.resolved().value(BuildField.COOLANT_LIMIT), "build or its class"));
        lines.add(line("coolant margin", "T_lim - T_h", "K", f.coolantMarginK(), DERIVED));
        lines.add(line("oil margin", "T_o,lim - T_o", "K", f.oilMarginK(), DERIVED));
        lines.add(line("boiling margin", "T_sat - T_h", "K", f.boilingMarginK(), DERIVED));
        lines.add(line("inlet temperature difference", "ITD", "K", f.inletDifferenceK(), DERIVED));
        lines.add(line("specific dissipation", "Q/ITD", "W/K", f.specificDissipationWPerK(), DERIVED));
        lines.add(line("approach of the coolant", "T_c - T_in", "K", f.coolantApproachK(), DERIVED));
        lines.add(line(
                "approach of the air",
                "T_h - T_out",
                "K",
                s.engineOutK() - s.air().outK(),
                DERIVED));
        bothWays(lines, "limiting ambient temperature", "LAT", f.limitingAmbientLinearK(), f.limitingAmbientK());
        bothWays(lines, "air to boil", "ATB", f.boilingAmbientLinearK(), f.boilingAmbientK());
        add("Figures", lines);
    }

    private static void bothWays(
            List<WorkingLine> lines, String quantity, String symbol, double linearK, double solvedK) {
        lines.add(line(quantity + ", linear", symbol, "K", linearK, "SAE J1393: ambient plus margin"));
        if (Double.isFinite(solvedK)) {
            lines.add(line(
                    quantity + ", solved", symbol, "K", solvedK, "ambient at which the balance meets it, " + DERIVED));
            lines.add(line(quantity + ", solved less linear", symbol, "K", solvedK - linearK, DERIVED));
        }
    }

    private void add(String title, List<WorkingLine> lines) {
        sections.add(new WorkingSection(title, lines));
    }

    private static WorkingLine line(String quantity, String symbol, String unit, double value, String source) {
        return new WorkingLine(quantity, symbol, unit, value, source);
    }
}
