package headertank.app.handover.photo;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import javax.imageio.ImageIO;

/** Picture files for tests, as a camera makes them. */
public final class Pictures {

    /** Stands for what a camera hides in a file. */
    public static final String HIDDEN = "52.00 N 4.00 E hidden place";

    private Pictures() {}

    /** Left half red, right half blue. */
    public static byte[] of(String format, int width, int height) throws IOException {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int x = 0; x < width; x++) {
            for (int y = 0; y < height; y++) {
                image.setRGB(x, y, (x < width / 2 ? Color.RED : Color.BLUE).getRGB());
            }
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, format, out);
        return out.toByteArray();
    }

    /** A JPEG file with an Exif segment that notes how the camera was held, and a place. */
    public static byte[] held(int orientation, int width, int height) throws IOException {
        byte[] plain = of("jpeg", width, height);
        ByteArrayOutputStream exif = new ByteArrayOutputStream();
        exif.writeBytes("Exif\0\0".getBytes(StandardCharsets.US_ASCII));
        exif.writeBytes(new byte[] {'M', 'M', 0, 42, 0, 0, 0, 8, 0, 1});
        exif.writeBytes(new byte[] {0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, (byte) orientation, 0, 0, 0, 0, 0, 0});
        exif.writeBytes(HIDDEN.getBytes(StandardCharsets.US_ASCII));
        int length = exif.size() + 2;
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(plain, 0, 2);
        out.writeBytes(new byte[] {(byte) 0xFF, (byte) 0xE1, (byte) (length >> 8), (byte) length});
        out.writeBytes(exif.toByteArray());
        out.write(plain, 2, plain.length - 2);
        return out.toByteArray();
    }
}
