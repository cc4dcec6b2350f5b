package headertank.app.log.file;

import headertank.app.log.file.LogRefused.Reason;
import java.io.IOException;
import java.io.Reader;
import java.util.Arrays;

/**
 * Hands a file on line by line: at most one line is read ahead, line ends are line feeds, bytes of zero that a logger leaves
 * behind when its current fails are gone, and a quote that is open at the end of a line is closed there, so that one bad line
 * does not take the next ones with it.
 */
final class LineFeed extends Reader {

    private static final char QUOTE = '"';

    private final Reader in;
    private final LogLimits limits;
    private final char separator;
    private final boolean spaces;
    private final long after;
    private final char[] buffer = new char[1 << 16];
    private int at;
    private int end;
    private boolean carriageReturn;

    private char[] line = new char[1024];
    private int length;
    private int given;
    private long number;
    private long comments;
    private boolean broken;
    private boolean quoted;

    /**
     * @param separator of cells; runs of spaces are made one where it is a space
     * @param after number of the last line that is not handed on
     */
    LineFeed(Reader in, LogLimits limits, char separator, long after) {
        this.in = in;
        this.limits = limits;
        this.separator = separator;
        this.spaces = separator == ' ';
        this.after = after;
    }

    /** Number of the line that was handed on last, from 1. */
    long number() {
        return number;
    }

    /** Lines left out because they are comments. */
    long comments() {
        return comments;
    }

    /** Whether a quote of the line did not end, or zeros stood in it. */
    boolean isBroken() {
        return broken;
    }

    /** The next line, blank ones included, without its end; null after the last. */
    String text() throws IOException {
        return nextLine() ? new String(line, 0, length) : null;
    }

    @Override
    public int read(char[] to, int offset, int most) throws IOException {
        if (given == length) {
            do {
                if (!nextLine()) {
                    length = 0;
                    given = 0;
                    return -1;
                }
            } while (number <= after || isBlank() || isComment());
            closeQuote();
            add('\n');
            given = 0;
        }
        int n = Math.min(most, length - given);
        System.arraycopy(line, given, to, offset, n);
        given += n;
        return n;
    }

    private boolean nextLine() throws IOException {
        length = 0;
        broken = false;
        quoted = false;
        boolean any = false;
        while (fill()) {
            any = true;
            int from = at;
            while (at < end) {
                char c = buffer[at];
                if (c == '\n' || c == '\r') {
                    take(from, at);
                    at++;
                    carriageReturn = c == '\r';
                    number++;
                    return true;
                }
                if (c == 0) {
                    take(from, at);
                    from = at + 1;
                    broken = true;
                } else if (c == QUOTE) {
                    quoted = true;
                }
                at++;
            }
            take(from, at);
        }
        if (any) {
            number++;
        }
        return any;
    }

    /** Whether there is something to read; a line feed after a carriage return belongs to it. */
    private boolean fill() throws IOException {
        if (at == end && !more()) {
            return false;
        }
        if (carriageReturn) {
            carriageReturn = false;
            if (buffer[at] == '\n') {
                at++;
                return at < end || more();
            }
        }
        return true;
    }

    private boolean more() throws IOException {
        int n;
        do {
            n = in.read(buffer, 0, buffer.length);
        } while (n == 0);
        at = 0;
        end = Math.max(0, n);
        return n > 0;
    }

    private void take(int from, int to) {
        int n = to - from;
        if (length + n > limits.lineLength()) {
            throw new LogRefused(Reason.LINE_TOO_LONG, number + 1, length + (long) n, limits.lineLength());
        }
        room(n);
        System.arraycopy(buffer, from, line, length, n);
        length += n;
    }

    private void add(char c) {
        room(1);
        line[length++] = c;
    }

    private void room(int n) {
        if (length + n > line.length) {
            line = Arrays.copyOf(line, Math.max(2 * line.length, length + n));
        }
    }

    private boolean isBlank() {
        for (int i = 0; i < length; i++) {
            if (line[i] > ' ' && line[i] != '\u00a0') {
                return false;
            }
        }
        return true;
    }

    private boolean isComment() {
        int i = 0;
        while (line[i] <= ' ') {
            i++;
        }
        boolean comment = line[i] == '#' || line[i] == '/' && i + 1 < length && line[i + 1] == '/';
        if (comment) {
            comments++;
        }
        return comment;
    }

    /** Ends what the reader of cells would take for a quoted cell that goes on in the next line. */
    private void closeQuote() {
        if (spaces) {
            joinSpaces();
        }
        if (!quoted) {
            return;
        }
        boolean inside = false;
        boolean bare = false;
        boolean wasQuoted = false;
        for (int i = 0; i < length; i++) {
            char c = line[i];
            if (inside) {
                inside = c != QUOTE;
            } else if (c == separator) {
                bare = false;
                wasQuoted = false;
            } else if (c == QUOTE && !bare) {
                inside = true;
                wasQuoted = true;
            } else {
                bare = !wasQuoted;
            }
        }
        if (inside) {
            add(QUOTE);
            broken = true;
        }
    }

    private void joinSpaces() {
        int to = 0;
        for (int i = 0; i < length; i++) {
            char c = line[i] == '\t' ? ' ' : line[i];
            if (c != ' ' || to > 0 && line[to - 1] != ' ') {
                line[to++] = c;
            }
        }
        length = to > 0 && line[to - 1] == ' ' ? to - 1 : to;
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
