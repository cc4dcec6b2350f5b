package headertank.calc.coolant;

/**
 * Steady opening of a wax thermostat.
 *
 * <p>s = 0.006 + 0.994 z^2 (3 - 2 z), z = (T - Topen) / (Tfull - Topen) cut to 0..1; s flow area over full area [-], T
 * coolant temperature at the thermostat [K]. The smooth step is a modelling choice. Shut, it leaks through its vent: a hole of 2 to
 * 3 mm beside a valve of 30 mm that lifts 8 mm is 0.4 to 0.9 % of the open area, so 0.6 % (sizes from memory, derived); with 1.2 %
 * the cold radiator of a logged small car would not make the plateau of some 320 s that it does. The hysteresis of about 2 K is left out. A removed thermostat has s = 1.
 */
public final class Thermostat {

    /** Share of the full area through which a shut thermostat usually leaks [-]; derived from its vent. */
    public static final double LEAK_LIFT = 0.006;

    private Thermostat() {}

    /**
     * @param spec the thermostat
     * @param temperatureK coolant temperature at the thermostat, any number [K]
     * @return open area over full area, its leak to 1 [-]
     */
    public static double lift(ThermostatSpec spec, double temperatureK) {
        if (!spec.fitted()) {
            return 1.0;
        }
        double z = (temperatureK - spec.openingK()) / (spec.fullOpenK() - spec.openingK());
        if (!(z > 0)) {
            return spec.leakLift();
        }
        return z >= 1 ? 1.0 : spec.leakLift() + (1 - spec.leakLift()) * z * z * (3 - 2 * z);
    }
}
