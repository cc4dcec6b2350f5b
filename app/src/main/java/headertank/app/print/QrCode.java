package headertank.app.print;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;

/**
 * A QR code (ISO/IEC 18004), for drawing: dark modules as one path, in units of a module.
 *
 * @param size modules on each side, quiet zone included
 * @param path the dark modules
 */
public record QrCode(int size, String path) {

    /** Light modules around the code that the standard asks for (from memory). */
    private static final int QUIET = 4;

    /** With medium correction: a scratch over a seventh of the code does no harm. */
    static QrCode of(String text) {
        ByteMatrix modules;
        try {
            modules = Encoder.encode(text, ErrorCorrectionLevel.M).getMatrix();
        } catch (WriterException e) {
            throw new IllegalArgumentException("too long for a QR code: " + text.length() + " characters", e);
        }
        StringBuilder path = new StringBuilder();
        for (int y = 0; y < modules.getHeight(); y++) {
            int from = -1;
            for (int x = 0; x <= modules.getWidth(); x++) {
                boolean dark = x < modules.getWidth() && modules.get(x, y) == 1;
                if (dark && from < 0) {
                    from = x;
                } else if (!dark && from >= 0) {
                    path.append('M').append(from + QUIET).append(' ').append(y + QUIET);
                    path.append('h')
                            .append(x - from)
                            .append("v1h")
                            .append(from - x)
                            .append('z');
                    from = -1;
                }
            }
        }
        return new QrCode(modules.getWidth() + 2 * QUIET, path.toString());
    }
}
