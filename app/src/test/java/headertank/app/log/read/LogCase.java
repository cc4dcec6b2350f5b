package headertank.app.log.read;

import headertank.app.log.file.LogRefused;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.IntToDoubleFunction;

/** A file and what must come of it. */
final class LogCase {

    final String name;
    final byte[] bytes;
    final Map<LogQuantity, String> columns = new EnumMap<>(LogQuantity.class);
    final Map<LogQuantity, IntToDoubleFunction> values = new EnumMap<>(LogQuantity.class);
    final Map<Integer, String> badLines = new LinkedHashMap<>();
    LogRefused.Reason refused;
    IntToDoubleFunction timeS = i -> 0.5 * i;
    int rows = 40;
    int bad;
    int readBad = -1;
    int stretches = 1;
    int repeated;
    int gaps;
    int comments;
    boolean noTime;

    LogCase(String name, byte[] bytes) {
        this.name = name;
        this.bytes = bytes;
    }

    static LogCase of(String name, String text) {
        return of(name, text, StandardCharsets.UTF_8);
    }

    static LogCase of(String name, String text, Charset charset) {
        return new LogCase(name, text.getBytes(charset));
    }

    /** @param as heading and unit, parted by a bar */
    LogCase column(LogQuantity quantity, String as, IntToDoubleFunction si) {
        columns.put(quantity, as);
        values.put(quantity, si);
        return this;
    }

    LogCase no(LogQuantity quantity) {
        columns.put(quantity, "");
        return this;
    }

    LogCase refused(LogRefused.Reason reason) {
        refused = reason;
        return this;
    }

    LogCase rows(int n) {
        rows = n;
        return this;
    }

    /** @param lines as {@code number COLUMN FAULT} */
    LogCase bad(int n, Object... lines) {
        bad = n;
        for (int i = 0; i < lines.length; i += 2) {
            badLines.put((Integer) lines[i], (String) lines[i + 1]);
        }
        return this;
    }

    /** What reading counts beside, when it is not the same: readings that no sensor gives. */
    LogCase readBad(int n) {
        readBad = n;
        return this;
    }

    LogCase stretches(int n) {
        stretches = n;
        return this;
    }

    LogCase repeated(int n) {
        repeated = n;
        return this;
    }

    LogCase gaps(int n) {
        gaps = n;
        return this;
    }

    LogCase comments(int n) {
        comments = n;
        return this;
    }

    /** One of the usual rows is missing. */
    LogCase skip(int row) {
        IntToDoubleFunction all = timeS;
        timeS = i -> all.applyAsDouble(i < row ? i : i + 1);
        values.replaceAll((q, si) -> i -> si.applyAsDouble(i < row ? i : i + 1));
        return this;
    }

    LogCase time(IntToDoubleFunction s) {
        timeS = s;
        return this;
    }

    LogCase noTime() {
        noTime = true;
        return this;
    }

    @Override
    public String toString() {
        return name;
    }
}
