package headertank.app.form;

/**
 * Something to put right in a form, as the summary at the top of the page names it.
 *
 * @param id of the field on the page, empty for the form as a whole
 * @param text the sentence that stands beside the field too
 */
public record FormProblem(String id, String text) {}
