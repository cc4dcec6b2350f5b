package headertank.calc.duty;

/**
 * One state in which a car may stay.
 *
 * @param id stable name, unique within its duty
 * @param label plain English
 * @param roadSpeedMPerS road speed [m/s]
 * @param yawRad angle between the car's nose and the way it travels [rad]
 * @param ambientOffsetK how much hotter than the design ambient it is here, e.g. over hot tarmac in a queue [K]
 * @param demand what it asks of the engine
 * @param loadSigma one standard deviation of the heat that the demand's definition leaves open, as a share [-]
 */
public record OperatingPoint(
        String id,
        String label,
        double roadSpeedMPerS,
        double yawRad,
        double ambientOffsetK,
        Demand demand,
        double loadSigma) {

    public OperatingPoint {
        if (!(roadSpeedMPerS >= 0 && roadSpeedMPerS <= 90)) {
            throw new IllegalArgumentException("roadSpeedMPerS = " + roadSpeedMPerS + ": allowed is 0 to 90 m/s");
        }
        if (!(Math.abs(yawRad) <= Math.PI / 2)) {
            throw new IllegalArgumentException("yawRad = " + yawRad + ": allowed is -pi/2 to pi/2");
        }
    }

    /** @return whether the engine stands, so that there is a run over time but nothing to be steady about */
    public boolean engineOff() {
        return demand instanceof Demand.EngineOff;
    }

    /**
     * @param share speed of an electric pump over its full speed, 0 to 1 [-]
     * @return with the engine off the same point with an electric pump that runs at least so fast; else this one
     */
    public OperatingPoint withPumpRunOn(double share) {
        return demand instanceof Demand.EngineOff off
                ? new OperatingPoint(
                        id,
                        label,
                        roadSpeedMPerS,
                        yawRad,
                        ambientOffsetK,
                        new Demand.EngineOff(Math.max(share, off.pumpRunOnShare()), off.fansRunOn()),
                        loadSigma)
                : this;
    }

    /** @return whether the car stands or creeps with its engine idling, as it may for long */
    public boolean idles() {
        return demand instanceof Demand.Idle;
    }
}
