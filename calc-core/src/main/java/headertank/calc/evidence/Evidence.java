package headertank.calc.evidence;

/** Something that was seen of one car or of one of its parts, from which {@code Rater.learn} learns. */
public sealed interface Evidence
        permits CoreSheet, DriveLog, FanSheet, NeverHot, PumpSheet, SettledReading, WorkshopReadings {}
