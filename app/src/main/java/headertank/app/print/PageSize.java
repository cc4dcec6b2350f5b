package headertank.app.print;

import headertank.app.problem.FieldProblem;
import headertank.app.problem.InvalidInputException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** What a sheet or label is printed on; width and height in millimetres. */
public enum PageSize {
    A4(210, 297),
    LETTER(215.9, 279.4),
    LABEL(100, 62);

    private final double widthMm;
    private final double heightMm;

    PageSize(double widthMm, double heightMm) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
    }

    /**
     * The paper of a sheet by its name, in small letters as in an address.
     *
     * @throws InvalidInputException when no sheet is printed on such paper
     */
    static PageSize ofSheet(String name) {
        return Arrays.stream(new PageSize[] {A4, LETTER})
                .filter(p -> p.name().toLowerCase(Locale.ROOT).equals(name))
                .findFirst()
                .orElseThrow(() -> new InvalidInputException(
                        List.of(new FieldProblem("/paper", name, "a4, letter", "No such paper: a4 or letter."))));
    }

    float widthMm() {
        return (float) widthMm;
    }

    float heightMm() {
        return (float) heightMm;
    }
}
