package headertank.app.carspec;

/** A car has a new revision. Published in the transaction that saves it. */
public record RevisionSaved(long carId, int number, long revisionId) {}
