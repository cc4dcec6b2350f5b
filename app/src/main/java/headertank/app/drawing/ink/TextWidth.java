package headertank.app.drawing.ink;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** How wide a text is in the font of the printed sheet, which is wider than those of the pages. */
public final class TextWidth {

    private static final Widths PLAIN = widths("/fonts/DejaVuSans.ttf");
    private static final Widths BOLD = widths("/fonts/DejaVuSans-Bold.ttf");

    private TextWidth() {}

    public static double of(String text, double size, boolean bold) {
        Widths widths = bold ? BOLD : PLAIN;
        return size * text.chars().mapToDouble(widths::of).sum();
    }

    private static Widths widths(String file) {
        try (InputStream in = TextWidth.class.getResourceAsStream(file);
                TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in))) {
            CmapLookup glyphs = font.getUnicodeCmapLookup();
            double[] known = new double[0x2300];
            for (int c = 0; c < known.length; c++) {
                known[c] = font.getAdvanceWidth(glyphs.getGlyphId(c)) / (double) font.getUnitsPerEm();
            }
            return new Widths(known);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Widths of the letters, each as a share of the size. */
    private record Widths(double[] known) {
        public double of(int c) {
            return c < known.length ? known[c] : 1;
        }
    }
}
