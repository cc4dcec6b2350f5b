package headertank.app.duty;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Tells one text of a duty from another. */
final class CsvHash {

    private CsvHash() {}

    /** SHA-256 of the text in UTF-8. */
    static byte[] of(String text) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The first digits, enough to see that a text has changed. */
    static String brief(String text) {
        return HexFormat.of().formatHex(of(text)).substring(0, 12);
    }
}
