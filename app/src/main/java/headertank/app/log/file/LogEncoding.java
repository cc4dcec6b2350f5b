package headertank.app.log.file;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;

/**
 * How characters are written: told by the byte-order mark, else by where bytes of zero stand, else UTF-8 if it is that, else
 * Windows-1252, which Latin-1 is a part of.
 *
 * @param mark bytes of the byte-order mark
 */
record LogEncoding(Charset charset, int mark) {

    private static final int SNIFFED = 1 << 16;
    private static final Charset LATIN = Charset.forName("windows-1252");
    private static final Charset UTF_32_LE = Charset.forName("UTF-32LE");

    /** Opens a file as text. */
    static Reader reader(InputStream bytes) throws IOException {
        BufferedInputStream in = new BufferedInputStream(bytes, SNIFFED);
        in.mark(SNIFFED);
        byte[] start = in.readNBytes(SNIFFED - 1);
        in.reset();
        LogEncoding encoding = of(start);
        in.skipNBytes(encoding.mark());
        return new InputStreamReader(in, encoding.charset());
    }

    static LogEncoding of(byte[] b) {
        if (starts(b, 0xFF, 0xFE, 0, 0)) {
            return new LogEncoding(UTF_32_LE, 4);
        }
        if (starts(b, 0xEF, 0xBB, 0xBF)) {
            return new LogEncoding(StandardCharsets.UTF_8, 3);
        }
        if (starts(b, 0xFF, 0xFE)) {
            return new LogEncoding(StandardCharsets.UTF_16LE, 2);
        }
        if (starts(b, 0xFE, 0xFF)) {
            return new LogEncoding(StandardCharsets.UTF_16BE, 2);
        }
        return new LogEncoding(withoutMark(b), 0);
    }

    private static boolean starts(byte[] b, int... with) {
        if (b.length < with.length) {
            return false;
        }
        for (int i = 0; i < with.length; i++) {
            if ((b[i] & 0xFF) != with[i]) {
                return false;
            }
        }
        return true;
    }

    private static Charset withoutMark(byte[] b) {
        int[] zeros = new int[2];
        for (int i = 0; i < b.length; i++) {
            if (b[i] == 0) {
                zeros[i & 1]++;
            }
        }
        int pairs = b.length / 2;
        if (zeros[1] > 0.7 * pairs && zeros[0] < 0.1 * pairs) {
            return StandardCharsets.UTF_16LE;
        }
        if (zeros[0] > 0.7 * pairs && zeros[1] < 0.1 * pairs) {
            return StandardCharsets.UTF_16BE;
        }
        CoderResult read =
                StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(b), CharBuffer.allocate(b.length), false);
        return read.isError() ? LATIN : StandardCharsets.UTF_8;
    }
}
