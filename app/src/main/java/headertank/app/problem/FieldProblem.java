package headertank.app.problem;

/**
 * One faulty field of an input.
 *
 * @param pointer JSON pointer to the field, {@code /radiator/coreWidthM}
 * @param value what was sent, or null
 * @param allowed what is accepted, in words
 * @param message the sentence for a person
 */
public record FieldProblem(String pointer, Object value, String allowed, String message) {}
