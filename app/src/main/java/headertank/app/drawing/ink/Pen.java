package headertank.app.drawing.ink;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Draws strokes and texts of one panel. Not thread-safe. */
public final class Pen {

    public static final String INK = "#1c2226";
    public static final String SOFT = "#4f5a60";
    public static final String FAINT = "#aab2b0";
    public static final String METAL = "#e9ece8";
    public static final String PAPER = "#ffffff";
    public static final String COOLANT = "#1d5a6b";
    public static final String AIR = "#7a4b00";
    public static final String STOP = "#9b1c1c";
    public static final String NONE = "none";

    private final List<Stroke> strokes = new ArrayList<>();
    private final List<DrawingLabel> labels = new ArrayList<>();

    /** A path as it stands. */
    public void path(String part, String d, String fill, String colour, double width, boolean assumed) {
        strokes.add(new Stroke(part, d, fill, colour, width, assumed));
    }

    /** A line through points given as x, y, x, y and so on. */
    public void line(String part, String colour, double width, boolean assumed, double... xy) {
        path(part, points(xy), NONE, colour, width, assumed);
    }

    /** A closed shape through points given as x, y, x, y and so on. */
    public void shape(String part, String fill, String colour, double width, boolean assumed, double... xy) {
        path(part, points(xy) + "z", fill, colour, width, assumed);
    }

    public void box(String part, String fill, double x, double y, double w, double h, boolean assumed) {
        shape(part, fill, INK, 1.6, assumed, x, y, x + w, y, x + w, y + h, x, y + h);
    }

    public void circle(String part, String fill, double x, double y, double r, boolean assumed) {
        path(part, circle(x, y, r), fill, INK, 1.6, assumed);
    }

    public static String circle(double x, double y, double r) {
        return text("M%s %sa%s %s 0 1 0 %s 0a%s %s 0 1 0 %s 0z", x - r, y, r, r, 2 * r, r, r, -2 * r);
    }

    /** A line with an arrow's head at its end. */
    public void arrow(String part, String colour, double width, boolean assumed, double... xy) {
        line(part, colour, width, assumed, xy);
        int n = xy.length;
        double dx = xy[n - 2] - xy[n - 4];
        double dy = xy[n - 1] - xy[n - 3];
        double length = Math.hypot(dx, dy);
        double ux = dx / length;
        double uy = dy / length;
        double size = 4 + 1.8 * width;
        double x = xy[n - 2] + 0.5 * size * ux;
        double y = xy[n - 1] + 0.5 * size * uy;
        double backX = x - size * ux;
        double backY = y - size * uy;
        double half = 0.5 * size;
        shape(
                part + "-head",
                colour,
                NONE,
                0,
                false,
                x,
                y,
                backX - half * uy,
                backY + half * ux,
                backX + half * uy,
                backY - half * ux);
    }

    /** Writes a text into a column, line under line; returns the base line of the next. */
    public double write(String part, double x, double y, double width, String text, double size, boolean bold) {
        double at = y;
        for (String line : lines(text, width, size, bold)) {
            labels.add(new DrawingLabel(part, x, at, line, size, bold));
            at += Math.rint(1.25 * size);
        }
        return at;
    }

    private static List<String> lines(String text, double width, double size, boolean bold) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.strip().split(" ")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && TextWidth.of(longer, size, bold) > width) {
                lines.add(line);
                longer = word;
            }
            line = longer;
        }
        lines.add(line);
        return lines;
    }

    public static String points(double... xy) {
        StringBuilder d = new StringBuilder();
        for (int i = 0; i < xy.length; i += 2) {
            d.append(i == 0 ? 'M' : 'L').append(number(xy[i])).append(' ').append(number(xy[i + 1]));
        }
        return d.toString();
    }

    /** A path with numbers to one decimal. */
    public static String text(String pattern, Double... numbers) {
        Object[] rounded = new Object[numbers.length];
        for (int i = 0; i < numbers.length; i++) {
            rounded[i] = number(numbers[i]);
        }
        return String.format(Locale.ROOT, pattern, rounded);
    }

    private static String number(double v) {
        double rounded = Math.rint(10 * v) / 10 + 0.0;
        return rounded == Math.rint(rounded) ? String.valueOf((long) rounded) : String.valueOf(rounded);
    }

    public DrawingPanel panel(String id, int width, double height) {
        return new DrawingPanel(id, width, (int) Math.ceil(height), strokes, labels);
    }
}
