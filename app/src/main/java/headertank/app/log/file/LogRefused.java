package headertank.app.log.file;

/** A file that is no log, or is larger in some way than {@link LogLimits} allow. */
public final class LogRefused extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** What is wrong with the whole. */
    public enum Reason {
        /** Nothing in it. */
        EMPTY,
        /** Pictures, archives, workbooks. */
        NOT_TEXT,
        /** No lines of numbers below each other that are parted in one way. */
        NO_ROWS,
        /** More cells in the rows than headings: a comma both parts cells and marks decimals. */
        COMMA_TWICE,
        LINE_TOO_LONG,
        TOO_MANY_COLUMNS,
        CELL_TOO_LONG,
        TOO_MANY_ROWS
    }

    private final Reason reason;
    private final long line;
    private final long found;
    private final long most;

    /**
     * @param line number of the line, 0 when it is about the whole
     * @param found how many or how long; a longer one is not counted to its end
     * @param most what is allowed
     */
    public LogRefused(Reason reason, long line, long found, long most) {
        super(reason + " in line " + line + ": " + found + ", at most " + most);
        this.reason = reason;
        this.line = line;
        this.found = found;
        this.most = most;
    }

    LogRefused(Reason reason) {
        this(reason, 0, 0, 0);
    }

    public Reason reason() {
        return reason;
    }

    public long line() {
        return line;
    }

    public long found() {
        return found;
    }

    public long most() {
        return most;
    }
}
