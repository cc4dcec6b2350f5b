package headertank.app.check.figure;

import headertank.app.check.stored.DutyResult.FindingLine;
import headertank.app.check.stored.StoredMessage;
import headertank.calc.verdict.VerdictText;
import java.util.Arrays;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What stands before a finding, so that it is told at a glance. What the finding says decides, not only what it lets the car do: good
 * news alone has a tick and its colour.
 */
public enum FindingSign {
    /** A limit is kept. */
    HOLDS("\u2713"),
    /** Something to know that keeps nobody from going. */
    NOTE("i"),
    /** To be accepted or cleared up. */
    CONDITION("!"),
    /** The car does not go like this. */
    STOP("\u2715");

    private static final Set<String> HOLDING = Arrays.stream(VerdictText.values())
            .filter(VerdictText::holds)
            .map(VerdictText::code)
            .collect(Collectors.toUnmodifiableSet());

    private static final Set<String> MARGINS = Set.of("COOLANT_MARGIN", "BOILING_MARGIN", "OIL_MARGIN");

    private final String mark;

    FindingSign(String mark) {
        this.mark = mark;
    }

    static FindingSign of(FindingLine finding) {
        return switch (finding.verdict()) {
            case NO_GO -> STOP;
            case GO_WITH_CONDITIONS -> CONDITION;
            case GO -> holds(finding) ? HOLDS : NOTE;
        };
    }

    /** A sentence of format 1 has no code of its own: there a margin says that it holds while it is not below 0. */
    private static boolean holds(FindingLine finding) {
        return finding.text().code().equals(StoredMessage.PLAIN)
                ? MARGINS.contains(finding.code()) && finding.figure().si() >= 0 || finding.isChance()
                : HOLDING.contains(finding.text().code());
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
