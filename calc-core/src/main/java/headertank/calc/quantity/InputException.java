package headertank.calc.quantity;

import java.util.List;
import java.util.stream.Collectors;

/** An input with faults; it carries all of them at once. */
public final class InputException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final transient List<InputProblem> problems;

    public InputException(List<InputProblem> problems) {
        super(problems.stream().map(InputProblem::toString).collect(Collectors.joining("; ")));
        this.problems = List.copyOf(problems);
    }

    public List<InputProblem> problems() {
        return problems;
    }
}
