package headertank.app.form;

import java.util.List;

/** The beginning of a list, and whether there is more of it. */
public record ListPage<T>(List<T> lines, boolean more) {

    public ListPage {
        lines = List.copyOf(lines);
    }

    /** @param found up to one line more than is shown */
    public static <T> ListPage<T> of(List<T> found, int shown) {
        return new ListPage<>(found.subList(0, Math.min(shown, found.size())), found.size() > shown);
    }

    /** The line that the next page begins behind; null when there is none. */
    public T last() {
        return more ? lines.get(lines.size() - 1) : null;
    }
}
