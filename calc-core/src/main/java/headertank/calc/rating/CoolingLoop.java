package headertank.calc.rating;

import headertank.calc.choice.FanDrive;
import headertank.calc.choice.SensorPlacement;
import headertank.calc.control.FanController;
import headertank.calc.coolant.CapPosition;
import headertank.calc.coolant.CoolantFlow;
import headertank.calc.coolant.PumpInlet;
import headertank.calc.sensor.SensorReading;
import java.util.function.DoubleUnaryOperator;

/** Coolant flows and fan drive of a car at a coolant temperature, on top of its {@link AirLoop}. Not thread-safe. */
final class CoolingLoop {

    static final double DRIVE_TOLERANCE = 1e-12;
    private static final double FLOW_FACTOR_TOLERANCE = 1e-9;

    private final Plant plant;
    private final PointLoad load;
    private final AirLoop air;

    private CoolantFlow flow;
    private double lift;
    private double circulatedK = Double.NaN;
    private double circulatedLift = Double.NaN;
    private double circulatedFactor = Double.NaN;
    private double heldDrive = Double.NaN;

    CoolingLoop(Plant plant, PointLoad load, AirLoop air) {
        this.plant = plant;
        this.load = load;
        this.air = air;
    }

    /** @return coolant flows of the last state */
    CoolantFlow flow() {
        return flow;
    }

    /** @return thermostat lift of the last state [-] */
    double lift() {
        return lift;
    }

    /** Holds the drive of the fans from here, whatever they ask for; NaN lets them go. */
    void hold(double drive) {
        heldDrive = drive;
    }

    /** Balances the coolant flows at this lift. */
    void circulate(double hotK, double atLift) {
        circulate(hotK, atLift, 1);
    }

    private void circulate(double hotK, double atLift, double pumpFlowFactor) {
        lift = atLift;
        if (hotK == circulatedK && atLift == circulatedLift && pumpFlowFactor == circulatedFactor) {
            return;
        }
        circulatedK = hotK;
        circulatedLift = atLift;
        circulatedFactor = pumpFlowFactor;
        double density = plant.coolant().densityKgPerM3(hotK);
        double viscosity = plant.coolant().viscosityPaS(hotK);
        flow = plant.circuit().solve(load.pumpSpeedShare(), lift, pumpFlowFactor, q -> plant.radiator()
                .coolantDropPa(q, density, viscosity));
    }

    /**
     * Brings fan drive, air flow, radiator heat and recirculation to agree at this coolant temperature. Where the fans follow
     * something that they cool themselves (a clutch the air behind the core, a sensor in the tank the coolant behind it) more
     * drive asks for less drive, so the drive is a bracketed root of its own.
     *
     * <p>So is what a pump still delivers that draws vapour: the less it delivers, the less the hoses and the core take from
     * the pressure at its inlet, and the colder the coolant comes back.
     */
    void settle(double hotK, double ambientK, double takenW, double looseShare) {
        settleAir(hotK, ambientK, takenW, looseShare);
        double asDrawn = inlet().flowFactor();
        if (asDrawn == 1) {
            return;
        }
        DoubleUnaryOperator surplus = factor -> {
            circulate(hotK, lift, factor);
            settleAir(hotK, ambientK, takenW, 0);
            return factor - inlet().flowFactor();
        };
        double found = RisingRoot.find(
                surplus, PumpInlet.CAVITATING_FLOW, 1, 1, 1 - asDrawn, 1, FLOW_FACTOR_TOLERANCE, FLOW_FACTOR_TOLERANCE);
        surplus.applyAsDouble(Math.max(PumpInlet.CAVITATING_FLOW, Math.min(1, found)));
    }

    /** @return the pump's inlet in the last state */
    PumpInlet inlet() {
        return PumpInlet.of(
                plant.capPressurePa(),
                CapPosition.HOT_TANK,
                flow,
                plant.coolant().vapourPressurePa(air.radiatorOutK()),
                load.pumpSpeedShare());
    }

    private void settleAir(double hotK, double ambientK, double takenW, double looseShare) {
        air.startFrom(hotK, ambientK);
        double drive = heldDrive;
        if (Double.isNaN(drive)) {
            drive = followsItself() ? selfConsistentDrive(hotK, ambientK) : wantedDrive(hotK, ambientK);
        }
        air.settle(hotK, ambientK, flow.radiatorM3PerS(), drive, takenW, looseShare);
    }

    /** Whether the fans follow something that they cool themselves. */
    boolean followsItself() {
        return plant.fanDrive() == FanDrive.CLUTCH
                || plant.fanDrive() == FanDrive.ELECTRIC && plant.fanSensor() == SensorPlacement.TANK;
    }

    /** @return smallest drive that the fans may have [-] */
    double lowestDrive() {
        return plant.fanDrive() == FanDrive.CLUTCH ? plant.clutch().slipCold() : 0;
    }

    /** @return largest drive that the fans may have [-] */
    double highestDrive() {
        return plant.fanDrive() == FanDrive.CLUTCH ? plant.clutch().slipHot() : 1;
    }

    private double selfConsistentDrive(double hotK, double ambientK) {
        double lowest = lowestDrive();
        double highest = highestDrive();
        double guess = Math.max(lowest, Math.min(highest, air.drive()));
        DoubleUnaryOperator surplus = d -> {
            air.settle(hotK, ambientK, flow.radiatorM3PerS(), d, 0, 0);
            return d - wantedDrive(hotK, ambientK);
        };
        double found = RisingRoot.find(
                surplus, lowest, highest, guess, surplus.applyAsDouble(guess), 1, DRIVE_TOLERANCE, DRIVE_TOLERANCE);
        return Math.max(lowest, Math.min(highest, found));
    }

    /** @return duty or slip that control or clutch ask for in the present state [-] */
    double wantedDrive(double hotK, double ambientK) {
        return switch (plant.fanDrive()) {
            case ELECTRIC ->
                FanController.steadyDuty(
                        plant.control(),
                        SensorReading.steadyK(
                                plant.fanSensor(), hotK, air.radiatorOutK(), ambientK, flow.radiatorM3PerS()));
            case CLUTCH -> plant.clutch().slip(air.airOutK());
            case NONE -> 0;
        };
    }
}
