package headertank.app.check.figure;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** Codes that checks were stored with and that are called otherwise now; what is stored never changes. */
final class OldCodes {

    private static final Properties NOW = read();

    private OldCodes() {}

    /** What the code is called now. */
    static String now(String code) {
        return NOW.getProperty(code, code);
    }

    private static Properties read() {
        try (InputStream in = OldCodes.class.getResourceAsStream("/checks/old-codes.properties")) {
            Properties codes = new Properties();
            codes.load(in);
            return codes;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
