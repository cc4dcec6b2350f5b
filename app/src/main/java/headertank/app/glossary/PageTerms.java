package headertank.app.glossary;

import static headertank.app.glossary.Term.*;

import java.util.List;
import java.util.Map;

/** Which words a page uses: each page explains its own at its foot. By the pattern of the page's route. */
final class PageTerms {

    private static final List<Term> VERDICTS = List.of(GO, CONDITIONS, NO_GO);
    private static final List<Term> SOURCES = List.of(MEASURED, DATASHEET, ADVERTISED, GUESSED, ASSUMED);
    private static final List<Term> FIRST_SCREEN =
            List.of(DUTY, OPERATING_POINT, CHANCE, RANGE, COOLANT_MARGIN, CHECK, REVISION, SIGNATURE, OUT_OF_DATE);
    private static final List<Term> CHECK_LISTS = List.of(CHECK_LIST, SEND_BACK, CHECK, SIGNATURE);

    private static final Map<String, List<Term>> BY_PATTERN = Map.ofEntries(
            Map.entry("/", List.of(JOB, SPEC, CHECK, SIGNATURE, CHECK_LIST, SEND_BACK, HOT_REPORT)),
            Map.entry("/first-steps", List.of(DUTY, CATALOGUE, SPEC, CHECK)),
            Map.entry("/jobs", List.of(JOB, SPEC, CHECK, SIGNATURE, CHECK_LIST, SEND_BACK)),
            Map.entry("/jobs/unsigned", List.of(JOB, CHECK, SIGNATURE)),
            Map.entry("/jobs/overdue", List.of(CHECK, OUT_OF_DATE)),
            Map.entry("/jobs/{id}", List.of(JOB, SPEC, CHECK, SIGNATURE, CHECK_LIST, SEND_BACK)),
            Map.entry("/jobs/{id}/hand-over", CHECK_LISTS),
            Map.entry(
                    "/cars/{id}",
                    joined(List.of(
                            VERDICTS,
                            List.of(SPEC, REVISION),
                            CHECK_LISTS,
                            List.of(OUT_OF_DATE, DUTY, JOB, HOT_REPORT)))),
            Map.entry(
                    "/cars/{id}/spec",
                    joined(List.of(
                            List.of(SPEC, CLASS_OF_CAR, DUTY),
                            SOURCES,
                            VERDICTS,
                            List.of(COOLANT_MARGIN, RISKY_CHOICE)))),
            Map.entry("/cars/{id}/spec/similar", List.of(SPEC, GUESSED)),
            Map.entry("/cars/{id}/revisions/{number}", joined(List.of(List.of(REVISION, CLASS_OF_CAR, DUTY), SOURCES))),
            Map.entry("/cars/{id}/history", List.of(REVISION, CHECK, SIGNATURE, OUT_OF_DATE, HOT_REPORT)),
            Map.entry("/cars/{id}/compare", joined(List.of(List.of(REVISION, COOLANT_MARGIN, SHARE, UNDONE), SOURCES))),
            Map.entry("/cars/{id}/revisions/{number}/check", joined(List.of(VERDICTS, FIRST_SCREEN))),
            Map.entry("/cars/{id}/logs", List.of(RUN, DUTY)),
            Map.entry("/cars/{id}/logs/{log}", joined(List.of(List.of(COOLANT_MARGIN, RANGE, DUTY), VERDICTS))),
            Map.entry("/checks/{id}", joined(List.of(VERDICTS, FIRST_SCREEN))),
            Map.entry("/checks/{id}/sign", joined(List.of(VERDICTS, List.of(DUTY, RANGE, SIGNATURE, OUT_OF_DATE)))),
            Map.entry("/checks/{id}/sign-off", joined(List.of(VERDICTS, List.of(DUTY, RANGE, SIGNATURE, OUT_OF_DATE)))),
            Map.entry(
                    "/checks/{id}/reasons",
                    joined(List.of(
                            VERDICTS,
                            List.of(
                                    COOLANT_MARGIN,
                                    CHANCE,
                                    RANGE,
                                    BOILING_MARGIN,
                                    OIL_MARGIN,
                                    HOTTEST_DAY,
                                    CURRENT_BALANCE,
                                    RUN,
                                    OPERATING_POINT)))),
            Map.entry("/checks/{id}/run", List.of(RUN, DUTY, OPERATING_POINT, CURRENT_BALANCE, OUT_OF_DATE)),
            Map.entry(
                    "/checks/{id}/what-if",
                    joined(List.of(List.of(WHAT_IF, RUN, COOLANT_MARGIN, CURRENT_BALANCE, SLOW_COOLANT), VERDICTS))),
            Map.entry("/checks/{id}/drawing", List.of(OPERATING_POINT, DUTY, RANGE)),
            Map.entry("/checks/{id}/flags", List.of(RISKY_CHOICE, CONDITIONS, NO_GO, RANGE)),
            Map.entry("/checks/{id}/assumed", List.of(ASSUMED, GUESSED, CLASS_OF_CAR, COOLANT_MARGIN, RANGE)),
            Map.entry(
                    "/checks/{id}/working",
                    List.of(OPERATING_POINT, COOLANT_MARGIN, BOILING_MARGIN, LAT, ATB, LINEAR, CURRENT_BALANCE)),
            Map.entry("/checks/{id}/handover", CHECK_LISTS),
            Map.entry("/checks/{id}/handover/decision", CHECK_LISTS),
            Map.entry("/incidents", List.of(HOT_REPORT, REVISION)),
            Map.entry("/incidents/{id}", List.of(HOT_REPORT, CHECK, RANGE, SHARE, UNDONE, RISKY_CHOICE)),
            Map.entry("/parts", List.of(CATALOGUE, DATASHEET, ADVERTISED)),
            Map.entry("/parts/{id}", List.of(CATALOGUE, RECALL, REVISION)),
            Map.entry("/duties", List.of(DUTY, OPERATING_POINT, RUN)),
            Map.entry("/duties/{id}/list", List.of(CHECK_LIST, DUTY)),
            Map.entry("/settings", joined(List.of(List.of(CHANCE, RANGE), VERDICTS))),
            Map.entry("/audit", List.of(AUDIT_TRAIL)),
            Map.entry("/audit/seals", List.of(AUDIT_TRAIL)));

    private PageTerms() {}

    /** Those of a page, in the order in which it uses them; none for a page that has no need of any. */
    static List<Term> of(String pattern) {
        return BY_PATTERN.getOrDefault(pattern, List.of());
    }

    private static List<Term> joined(List<List<Term>> some) {
        return some.stream().flatMap(List::stream).toList();
    }
}
