package headertank.app.audit;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;

/**
 * One line of the audit trail.
 *
 * @param who name of the account; empty when the program did it itself
 * @param subjectId null where a deed is about no single record
 */
record AuditEntry(
        long id, Instant at, Optional<String> who, String action, String subjectType, Long subjectId, String detail) {

    private static final Map<String, String> PAGES = Map.of(
            "car", "/cars/",
            "customer", "/customers/",
            "part", "/parts/",
            "job", "/jobs/",
            "incident", "/incidents/",
            "check_run", "/checks/");

    /** The page of the record; empty when it has none of its own. */
    public String path() {
        String page = PAGES.get(subjectType);
        return page == null || subjectId == null ? "" : page + subjectId;
    }
}
