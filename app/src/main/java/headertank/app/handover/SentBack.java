package headertank.app.handover;

/** A car goes back to be put right, and why. */
public record SentBack(long carId, long checkId, String reason) {}
