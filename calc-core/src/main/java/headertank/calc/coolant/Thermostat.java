package headertank.calc.coolant;

/**
 * Steady opening of a wax thermostat.
 *
 * <p>s = 0.006 + 0.994 z^2 (3 - 2 z), z = (T - Topen) / (Tfull - Topen) cut to 0..1; s flow area over full area [-], T
 * coolant temperature at the thermostat [K]. The smooth step is a modelling choice, so is the leak of 0.6 % when
 * shut: at 1.2 % the radiator of a logged small car would have warmed half-way before its thermostat opened, and the plateau of
 * some 320 s that its cold radiator then makes would not be there (published check). The hysteresis of about 2 K is left out. A removed thermostat has s = 1.
 */
public final class Thermostat {

    /** Share of the full area through which a shut thermostat leaks [-]; modelling choice, some leak half or twice as much. */
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
