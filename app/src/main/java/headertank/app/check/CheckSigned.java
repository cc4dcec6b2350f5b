package headertank.app.check;

import headertank.app.check.stored.Decision;

/** Somebody has signed a check. */
public record CheckSigned(long carId, long checkId, Decision decision) {}
