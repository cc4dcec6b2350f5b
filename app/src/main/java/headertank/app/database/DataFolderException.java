package headertank.app.database;

/** The data folder cannot be used as it is; says why and what to do. */
final class DataFolderException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String action;

    DataFolderException(String message, String action) {
        super(message);
        this.action = action;
    }

    String action() {
        return action;
    }
}
