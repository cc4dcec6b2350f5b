package headertank.app.carspec;

import headertank.app.problem.ConflictException;

/** Somebody else saved from the same revision first. */
public final class OvertakenException extends ConflictException {

    private static final long serialVersionUID = 1L;

    OvertakenException() {
        super("spec.overtaken");
    }
}
