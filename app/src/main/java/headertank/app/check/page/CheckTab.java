package headertank.app.check.page;

import headertank.app.check.stored.CheckResult;
import java.util.List;
import java.util.stream.Stream;

/** The pages of a check beside its first screen, in their order; {@code check.tab.<path>} names them. */
public enum CheckTab {
    REASONS("reasons", "duties"),
    RUN("run", "run"),
    WHAT_IF("what-if", "improvements"),
    DRAWING("drawing", "drawing"),
    FLAGS("flags", "flags"),
    ASSUMED("assumed", "assumptions"),
    WORKING("working", "working");

    private final String path;
    private final String anchor;

    CheckTab(String path, String anchor) {
        this.path = path;
        this.anchor = anchor;
    }

    /** Last part of its address, below that of the check. */
    public String path() {
        return path;
    }

    /** What its place was called while everything stood on one page: links of then lead here. */
    public String anchor() {
        return anchor;
    }

    /** How many things stand there; 0 where counting makes no sense. */
    public int count(CheckResult result) {
        return switch (this) {
            case REASONS ->
                (int) result.duties().stream()
                        .flatMap(d -> d.findings().stream())
                        .count();
            case WHAT_IF ->
                result.improvements().size()
                        + result.duties().stream()
                                .mapToInt(d -> d.whatIfs().size())
                                .sum();
            case FLAGS -> result.flags().size() + result.notes().size();
            case ASSUMED -> result.assumptions().size();
            case RUN, DRAWING, WORKING -> 0;
        };
    }

    /** Those that have something to show for a check. */
    public static List<CheckTab> of(CheckResult result) {
        return Stream.of(values())
                .filter(t -> t != RUN || !result.withRun().isEmpty())
                .toList();
    }
}
