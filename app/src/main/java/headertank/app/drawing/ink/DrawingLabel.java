package headertank.app.drawing.ink;

/**
 * One line of text in a drawing, from its left end.
 *
 * @param part what it belongs to
 * @param x left end
 * @param y base line
 * @param size size of the letters
 */
public record DrawingLabel(String part, double x, double y, String text, double size, boolean bold) {

    /** Width of the text in the widest of the fonts in use. */
    public double width() {
        return TextWidth.of(text, size, bold);
    }

    /** Upper edge of the tallest letters. */
    public double top() {
        return y - 0.78 * size;
    }

    /** Lower edge of the letters that reach below the line. */
    public double bottom() {
        return y + 0.24 * size;
    }
}
