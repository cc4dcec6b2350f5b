package headertank.calc.choice;

/** Whether the oil-air cooler has a thermostat. */
public enum OilThermostatFitting {
    /** Oil passes the cooler only when it is warm. */
    FITTED,
    /** Oil always passes the cooler. */
    NONE
}
