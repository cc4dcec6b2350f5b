package headertank.app.backup;

/** Why a backup cannot be made or brought back, in a sentence, and what to do. */
final class BackupException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String action;

    BackupException(String message, String action) {
        super(message);
        this.action = action;
    }

    BackupException(String message, String action, Throwable cause) {
        super(message, cause);
        this.action = action;
    }

    String action() {
        return action;
    }
}
