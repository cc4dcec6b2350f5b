package headertank.app.handover;

/** A car leaves the shop. */
public record Delivered(long carId, long checkId) {}
