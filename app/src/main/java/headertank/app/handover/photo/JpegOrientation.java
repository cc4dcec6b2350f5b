package headertank.app.handover.photo;

import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/**
 * How a camera was held: entry 0x0112 of the first directory of a JPEG file's Exif segment (Exif 2.3, CIPA DC-008, from
 * memory).
 */
final class JpegOrientation {

    private static final int ENTRY = 0x0112;
    private static final int EXIF_SEGMENT = 0xE1;
    private static final int IMAGE_DATA = 0xDA;
    private static final byte[] EXIF = {'E', 'x', 'i', 'f', 0, 0};

    private JpegOrientation() {}

    /** @return 1 to 8; 1, upright, when the file does not say */
    static int of(byte[] jpeg) {
        try {
            ByteBuffer file = ByteBuffer.wrap(jpeg).position(2);
            while (file.remaining() > 4 && (file.get() & 0xFF) == 0xFF) {
                int marker = file.get() & 0xFF;
                int length = file.getShort() & 0xFFFF;
                int next = file.position() + length - 2;
                if (marker == EXIF_SEGMENT && isExif(jpeg, file.position())) {
                    return inDirectory(ByteBuffer.wrap(jpeg, file.position() + EXIF.length, length - 2 - EXIF.length)
                            .slice());
                }
                if (marker == IMAGE_DATA) {
                    return 1;
                }
                file.position(next);
            }
        } catch (BufferUnderflowException | IllegalArgumentException | IndexOutOfBoundsException cut) {
            return 1;
        }
        return 1;
    }

    private static boolean isExif(byte[] jpeg, int at) {
        for (int i = 0; i < EXIF.length; i++) {
            if (jpeg[at + i] != EXIF[i]) {
                return false;
            }
        }
        return true;
    }

    private static int inDirectory(ByteBuffer tiff) {
        tiff.order(tiff.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        int directory = tiff.getInt(4);
        int entries = tiff.getShort(directory) & 0xFFFF;
        for (int i = 0; i < entries; i++) {
            int at = directory + 2 + 12 * i;
            if ((tiff.getShort(at) & 0xFFFF) == ENTRY) {
                int value = tiff.getShort(at + 8) & 0xFFFF;
                return value >= 1 && value <= 8 ? value : 1;
            }
        }
        return 1;
    }
}
