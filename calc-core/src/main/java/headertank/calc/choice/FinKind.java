package headertank.calc.choice;

/** How the fins between the tubes are made. */
public enum FinKind {
    /** Corrugated fins with louvres cut into them. */
    LOUVERED,
    /** Smooth fins, as in many old cores. */
    PLAIN
}
