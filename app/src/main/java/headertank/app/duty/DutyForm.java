package headertank.app.duty;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;

/**
 * A duty's text in its form.
 *
 * @param text comma-separated text, lines parted by line feeds
 * @param id the duty that is changed, empty for a new one
 * @param number its version that the text was taken from
 */
public record DutyForm(String text, String id, Integer number) {

    public DutyForm {
        text = text == null ? "" : text.replace("\r\n", "\n").replace('\r', '\n');
        id = id == null ? "" : id;
        number = number == null ? 0 : number;
    }

    DutyForm with(String otherText) {
        return new DutyForm(otherText, id, number);
    }

    /** Whether the database can keep the text. */
    public static boolean storable(String text) {
        return text.codePoints()
                .noneMatch(c -> c < 0x20 && c != '\n' && c != '\r' && c != '\t' || c >= 0xD800 && c <= 0xDFFF);
    }

    /** @throws CharacterCodingException when it is not UTF-8 */
    public static String decoded(byte[] bytes) throws CharacterCodingException {
        String text = StandardCharsets.UTF_8
                .newDecoder()
                .decode(ByteBuffer.wrap(bytes))
                .toString();
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }
}
