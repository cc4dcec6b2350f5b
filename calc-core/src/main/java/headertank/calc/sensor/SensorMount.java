package headertank.calc.sensor;

/** How the sensor touches what it measures. */
public enum SensorMount {
    /** Screwed into a port, wetted. */
    WETTED(4),
    /** Clamped around a hose or a pipe. */
    CLAMPED(15);

    private final double lagS;

    SensorMount(double lagS) {
        this.lagS = lagS;
    }

    /** @return time constant of the sensor itself [s]; modelling choice */
    public double lagS() {
        return lagS;
    }
}
