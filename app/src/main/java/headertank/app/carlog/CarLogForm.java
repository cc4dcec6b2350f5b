package headertank.app.carlog;

/**
 * A log of a car and what is said about it, as typed; what its columns are taken for is sent beside.
 *
 * @param log text of the log, empty when a file is sent
 * @param name what the log is called; that of the file when empty
 * @param ambient air around the car that day, with its unit; empty when a column tells it
 * @param drove id of the duty that was driven, may be empty
 * @param positions whether columns that tell where the car was are kept; a box that is not ticked is not sent
 */
record CarLogForm(String log, String name, String ambient, String drove, Boolean positions) {

    static final int LONGEST_NAME = 200;

    CarLogForm {
        log = log == null ? "" : log;
        name = text(name);
        ambient = text(ambient);
        drove = text(drove);
        positions = positions != null && positions;
    }

    private static String text(String typed) {
        return typed == null ? "" : typed.strip();
    }

    static CarLogForm blank() {
        return new CarLogForm("", "", "", "", false);
    }

    /** The same with the text of a file that was sent, and its name where nobody typed one. */
    CarLogForm with(String otherLog, String fileName) {
        return new CarLogForm(otherLog, name.isEmpty() ? fileName : name, ambient, drove, positions);
    }
}
