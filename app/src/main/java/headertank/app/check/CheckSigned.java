package headertank.app.check;

/** Somebody has signed a check. */
public record CheckSigned(long carId, long checkId, Decision decision) {}
