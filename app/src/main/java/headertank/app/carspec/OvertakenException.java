package headertank.app.carspec;

import headertank.app.problem.ConflictException;

/** Somebody else saved from the same revision first. */
public final class OvertakenException extends ConflictException {

    OvertakenException() {
        super("spec.overtaken");
    }
}
