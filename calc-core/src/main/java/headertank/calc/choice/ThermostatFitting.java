package headertank.calc.choice;

/** Whether the coolant has its thermostat. */
public enum ThermostatFitting {
    /** It is in its housing. */
    FITTED,
    /** The housing is empty. */
    REMOVED
}
