package headertank.calc.quantity;

import java.util.List;

/**
 * The working of one part of a result.
 *
 * @param title what part
 * @param lines its quantities in the order of computation
 */
public record WorkingSection(WorkedPart title, List<WorkingLine> lines) {

    public WorkingSection {
        lines = List.copyOf(lines);
    }
}
