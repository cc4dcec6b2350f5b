package headertank.calc.transients;

import headertank.calc.carspec.BuildField;
import headertank.calc.electric.ElectricBalance;
import headertank.calc.rating.Plant;
import org.hipparchus.util.FastMath;

/** What is around a lumped car and what its engine gives, at a moment. */
abstract class Place {

    /** Share of the base load that is left with the engine off; modelling choice. */
    private static final double BASE_LOAD_OFF = 0.1;

    /** Heat that hot exhaust and head still give when the engine stops, at 450 kW, guessed [W]. */
    private static final double SOAK_W = 1500;

    private static final double SOAK_DECAY_S = 300;
    private static final double SOAK_AT_W = 450e3;

    boolean engineOn;
    double ambientK;
    double surfaceWPerK;
    double oilToCoolantWPerK;
    double supplyA;
    double baseLoadA;
    HoodLoss hood;
    private final double runningA;
    private final double soakW;

    Place(Plant plant) {
        this.runningA = plant.fanRunningA();
        this.soakW = SOAK_W * plant.resolved().value(BuildField.ENGINE_POWER) / SOAK_AT_W;
    }

    /** Takes the alternator at this engine speed over its idle speed [-]. */
    final void alternator(Plant plant, double overIdle) {
        supplyA = plant.alternator().outputA(Math.min(50, overIdle));
        baseLoadA = plant.alternator().baseLoadA() * (engineOn ? 1 : BASE_LOAD_OFF);
    }

    /** @return how the car is cooled here */
    abstract Cooling cooling();

    /** @return heat into the coolant at these temperatures of coolant in the block and oil [W] */
    abstract double coolantW(double blockK, double oilK);

    /** @return heat into the oil likewise [W] */
    abstract double oilW(double blockK, double oilK);

    /**
     * @param coreAirWPerK heat capacity rate of the air through the core [W/K]
     * @return heat that the air takes from the oil; with the engine off no oil passes the air cooler, only the sump is left [W]
     */
    abstract double oilToAirW(double oilK, double coreAirWPerK);

    /** @return heat from hot ports and exhaust into the head's coolant, 0 with the engine on; falls with 300 s (guessed) [W] */
    double soakW(double sinceOffS) {
        return engineOn ? 0 : soakW * FastMath.exp(-sinceOffS / SOAK_DECAY_S);
    }

    /** @return fan speed over that at charging voltage for this duty [-] */
    double fanSpeedFactor(double duty) {
        return ElectricBalance.fanSpeedFactor(supplyA - baseLoadA, runningA * duty * duty);
    }

    /** @return current of all electric fans [A] */
    double fanCurrentA(double duty, double inrush) {
        double factor = fanSpeedFactor(duty);
        return inrush * runningA * duty * duty * factor * factor;
    }
}
