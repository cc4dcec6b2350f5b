package headertank.app.log.file;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** A log that can be read more than once, each time from its beginning. */
@FunctionalInterface
public interface LogSource {

    InputStream open() throws IOException;

    /** The whole log as text, for a form; empty when it is longer than that many characters. */
    default Optional<String> text(int most) throws IOException {
        StringBuilder text = new StringBuilder();
        char[] piece = new char[8192];
        try (Reader reader = LogEncoding.reader(open())) {
            for (int n = reader.read(piece); n >= 0; n = reader.read(piece)) {
                text.append(piece, 0, n);
                if (text.length() > most) {
                    return Optional.empty();
                }
            }
        }
        return Optional.of(text.toString().replaceAll("[\\p{Cntrl}&&[^\r\n\t]]", ""));
    }

    /** A log that lies in memory. */
    static LogSource of(byte[] bytes) {
        return () -> new ByteArrayInputStream(bytes);
    }

    /** A log that somebody put into a form. */
    static LogSource of(String text) {
        return of(text.getBytes(StandardCharsets.UTF_8));
    }
}
