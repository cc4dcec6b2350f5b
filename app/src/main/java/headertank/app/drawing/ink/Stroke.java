package headertank.app.drawing.ink;

/**
 * A line or area of a drawing.
 *
 * @param part what it belongs to, in one word; several strokes may share one
 * @param d its path, in pixels of the drawing
 * @param fill colour inside, or {@code none}
 * @param colour colour of the line, or {@code none}
 * @param width width of the line
 * @param assumed whether it shows something that nobody has stated: dashed
 */
public record Stroke(String part, String d, String fill, String colour, double width, boolean assumed) {}
