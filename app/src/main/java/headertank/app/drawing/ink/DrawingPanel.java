package headertank.app.drawing.ink;

import java.util.List;

/** One drawing: what is drawn and what is written, in pixels of the drawing. */
public record DrawingPanel(String id, int width, int height, List<Stroke> strokes, List<DrawingLabel> labels) {

    /** Pixels of paper for a pixel of the drawing: two panels fill the width of a sheet. */
    public static final double ON_PAPER = 0.69;

    public DrawingPanel {
        strokes = List.copyOf(strokes);
        labels = List.copyOf(labels);
    }

    /** Width on paper; a page stretches it to its column. */
    public long paperWidth() {
        return Math.round(width * ON_PAPER);
    }

    public long paperHeight() {
        return Math.round(height * ON_PAPER);
    }

    /** The strokes of one part. */
    public List<Stroke> of(String part) {
        return strokes.stream().filter(s -> s.part().equals(part)).toList();
    }
}
