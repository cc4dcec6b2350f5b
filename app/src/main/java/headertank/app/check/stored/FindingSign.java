package headertank.app.check.stored;

import java.util.Locale;

/** What stands before a finding, so that it is told at a glance; good news alone has a tick and its colour. */
public enum FindingSign {
    /** A limit is kept. */
    HOLDS("\u2713"),
    /** Something to know that keeps nobody from going. */
    NOTE("i"),
    /** To be accepted or cleared up. */
    CONDITION("!"),
    /** The car does not go like this. */
    STOP("\u2715");

    private final String mark;

    FindingSign(String mark) {
        this.mark = mark;
    }

    /** One character for the eye. */
    public String mark() {
        return mark;
    }

    /** Key of the word for those who hear the page, and on paper. */
    public String messageKey() {
        return "check.finding.sign." + name();
    }

    /** Name of its look. */
    public String style() {
        return "sign-" + name().toLowerCase(Locale.ROOT);
    }
}
