package headertank.app.stored;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** The hash that tells one stored content from another: SHA-256 after FIPS 180-4, of text in UTF-8. */
public final class Sha256 {

    private static final int BRIEF = 12;

    private Sha256() {}

    public static byte[] of(byte[] bytes) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(bytes);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    public static byte[] of(String text) {
        return of(text.getBytes(StandardCharsets.UTF_8));
    }

    /** In small hexadecimal digits. */
    public static String hex(String text) {
        return HexFormat.of().formatHex(of(text));
    }

    /** The first twelve hexadecimal digits, enough to see that a text has changed. */
    public static String brief(String text) {
        return hex(text).substring(0, BRIEF);
    }
}
