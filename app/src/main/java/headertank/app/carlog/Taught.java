package headertank.app.carlog;

import headertank.calc.evidence.Replay;
import java.util.Optional;

/**
 * A log driven again by the newest revision of its car.
 *
 * @param revision number of that revision
 * @param before by the car as its revision says
 * @param after by the car as it is known by its evidence; empty where nothing is learned of it
 */
record Taught(int revision, DriveRows rows, Replay before, Optional<Replay> after) {}
