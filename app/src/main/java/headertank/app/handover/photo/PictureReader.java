package headertank.app.handover.photo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Iterator;
import java.util.concurrent.Semaphore;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/**
 * Reads what was sent as a photo. The content decides what it is, not its name; it is turned upright, made smaller and drawn
 * anew, so that place, device and whatever else was hidden in the file are gone.
 */
public final class PictureReader {

    /** Longest side that is kept [pixels]; modelling choice. */
    static final int LONGEST_SIDE = 1600;

    /** Longest side of the small version [pixels]; modelling choice. */
    static final int SMALL_SIDE = 320;

    /** Largest file that is read [bytes]. */
    public static final int LARGEST_BYTES = 20 * 1024 * 1024;

    /** A file that claims to be larger is not unpacked [pixels]: what phones keep by themselves is smaller; modelling choice. */
    private static final long MOST_PIXELS = 52_000_000;

    /** Unpacked at the same time; whoever comes later waits, so that many photos at once do not fill the memory. */
    private static final Semaphore AT_ONCE = new Semaphore(2);

    private static final float QUALITY = 0.82f;

    private PictureReader() {}

    public static StoredPicture read(byte[] file) throws PictureRefused {
        if (file.length == 0) {
            throw new PictureRefused("handover.photo.missing");
        }
        if (file.length > LARGEST_BYTES) {
            throw new PictureRefused("handover.photo.large");
        }
        String format = format(file);
        AT_ONCE.acquireUninterruptibly();
        try {
            BufferedImage sent = decoded(file, format);
            BufferedImage upright = upright(sent, format.equals("jpeg") ? JpegOrientation.of(file) : 1);
            BufferedImage kept = scaled(upright, LONGEST_SIDE);
            return new StoredPicture(kept.getWidth(), kept.getHeight(), jpeg(kept), jpeg(scaled(kept, SMALL_SIDE)));
        } catch (IOException | RuntimeException e) {
            throw new PictureRefused("handover.photo.broken");
        } finally {
            AT_ONCE.release();
        }
    }

    private static String format(byte[] file) throws PictureRefused {
        if (starts(file, 0, 0xFF, 0xD8, 0xFF)) {
            return "jpeg";
        }
        if (starts(file, 0, 0x89, 'P', 'N', 'G', 0x0D, 0x0A, 0x1A, 0x0A)) {
            return "png";
        }
        boolean known = starts(file, 0, 'R', 'I', 'F', 'F') && starts(file, 8, 'W', 'E', 'B', 'P')
                || starts(file, 4, 'f', 't', 'y', 'p');
        throw new PictureRefused(known ? "handover.photo.other" : "handover.photo.none");
    }

    private static boolean starts(byte[] file, int at, int... bytes) {
        if (file.length < at + bytes.length) {
            return false;
        }
        for (int i = 0; i < bytes.length; i++) {
            if ((file[at + i] & 0xFF) != bytes[i]) {
                return false;
            }
        }
        return true;
    }

    /** Unpacks no more pixels than are needed. */
    private static BufferedImage decoded(byte[] file, String format) throws IOException, PictureRefused {
        Iterator<ImageReader> readers = ImageIO.getImageReadersByFormatName(format);
        ImageReader reader = readers.next();
        try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(file))) {
            reader.setInput(in, true, true);
            long width = reader.getWidth(0);
            long height = reader.getHeight(0);
            if (width * height > MOST_PIXELS) {
                throw new PictureRefused("handover.photo.pixels");
            }
            ImageReadParam how = reader.getDefaultReadParam();
            int step = (int) Math.max(1, Math.max(width, height) / (2L * LONGEST_SIDE));
            how.setSourceSubsampling(step, step, 0, 0);
            return reader.read(0, how);
        } finally {
            reader.dispose();
        }
    }

    /** @param orientation as cameras note it, 1 to 8 */
    private static BufferedImage upright(BufferedImage image, int orientation) {
        boolean turned = orientation >= 5;
        int w = image.getWidth();
        int h = image.getHeight();
        AffineTransform t =
                switch (orientation) {
                    case 2 -> new AffineTransform(-1, 0, 0, 1, w, 0);
                    case 3 -> new AffineTransform(-1, 0, 0, -1, w, h);
                    case 4 -> new AffineTransform(1, 0, 0, -1, 0, h);
                    case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
                    case 6 -> new AffineTransform(0, 1, -1, 0, h, 0);
                    case 7 -> new AffineTransform(0, -1, -1, 0, h, w);
                    case 8 -> new AffineTransform(0, -1, 1, 0, 0, w);
                    default -> new AffineTransform();
                };
        return drawn(image, turned ? h : w, turned ? w : h, t);
    }

    private static BufferedImage scaled(BufferedImage image, int longest) {
        double factor = Math.min(1, (double) longest / Math.max(image.getWidth(), image.getHeight()));
        int w = Math.max(1, (int) Math.round(factor * image.getWidth()));
        int h = Math.max(1, (int) Math.round(factor * image.getHeight()));
        return drawn(
                image,
                w,
                h,
                AffineTransform.getScaleInstance((double) w / image.getWidth(), (double) h / image.getHeight()));
    }

    private static BufferedImage drawn(BufferedImage image, int width, int height, AffineTransform how) {
        BufferedImage out = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = out.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, width, height);
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        g.drawImage(image, how, null);
        g.dispose();
        return out;
    }

    private static byte[] jpeg(BufferedImage image) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
            ImageWriteParam how = writer.getDefaultWriteParam();
            how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            how.setCompressionQuality(QUALITY);
            writer.setOutput(out);
            writer.write(null, new IIOImage(image, null, null), how);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
