package headertank.app.log.file;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** A log that can be read more than once, each time from its beginning. */
@FunctionalInterface
public interface LogSource {

    InputStream open() throws IOException;

    /** A log that lies in memory. */
    static LogSource of(byte[] bytes) {
        return () -> new ByteArrayInputStream(bytes);
    }

    /** A log that somebody put into a form. */
    static LogSource of(String text) {
        return of(text.getBytes(StandardCharsets.UTF_8));
    }
}
