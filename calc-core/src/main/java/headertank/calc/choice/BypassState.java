package headertank.calc.choice;

/** What was done with the passage that lets coolant return to the pump without seeing the radiator. */
public enum BypassState {
    /** A foot of the thermostat closes it as the thermostat opens; stays open when the thermostat is gone. */
    CLOSES_WITH_LIFT,
    /** Always open. */
    OPEN,
    /** Always open through a smaller hole. */
    RESTRICTED,
    /** Plugged. */
    BLOCKED
}
