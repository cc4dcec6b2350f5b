package headertank.app.journey;

import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;

/** Makes a picture of a page small enough for a repository: at most so high, and of the 256 colours it has most of. */
final class SmallPng {

    private static final int HIGHEST = 4000;
    private static final int COLOURS = 256;

    private SmallPng() {}

    static byte[] of(byte[] png) throws IOException {
        BufferedImage whole = ImageIO.read(new ByteArrayInputStream(png));
        int width = whole.getWidth();
        int height = Math.min(HIGHEST, whole.getHeight());
        int[] pixels = whole.getRGB(0, 0, width, height, null, 0, width);
        Map<Integer, Integer> count = new HashMap<>();
        for (int pixel : pixels) {
            count.merge(pixel & 0xffffff, 1, Integer::sum);
        }
        List<Integer> palette = count.entrySet().stream()
                .sorted(Map.Entry.<Integer, Integer>comparingByValue()
                        .reversed()
                        .thenComparing(Map.Entry.comparingByKey()))
                .limit(COLOURS)
                .map(Map.Entry::getKey)
                .toList();
        Map<Integer, Integer> nearest = new HashMap<>();
        byte[] indices = new byte[pixels.length];
        for (int i = 0; i < pixels.length; i++) {
            indices[i] = (byte) (int) nearest.computeIfAbsent(pixels[i] & 0xffffff, c -> nearest(c, palette));
        }
        BufferedImage small = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_INDEXED, model(palette));
        small.getRaster().setDataElements(0, 0, width, height, indices);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(small, "png", out);
        return out.toByteArray();
    }

    private static IndexColorModel model(List<Integer> palette) {
        int[] colours = palette.stream().mapToInt(Integer::intValue).toArray();
        return new IndexColorModel(8, colours.length, colours, 0, false, -1, java.awt.image.DataBuffer.TYPE_BYTE);
    }

    private static int nearest(int colour, List<Integer> palette) {
        int best = 0;
        int least = Integer.MAX_VALUE;
        for (int i = 0; i < palette.size() && least > 0; i++) {
            int red = (colour >> 16 & 255) - (palette.get(i) >> 16 & 255);
            int green = (colour >> 8 & 255) - (palette.get(i) >> 8 & 255);
            int blue = (colour & 255) - (palette.get(i) & 255);
            int distance = red * red + green * green + blue * blue;
            if (distance < least) {
                least = distance;
                best = i;
            }
        }
        return best;
    }
}
