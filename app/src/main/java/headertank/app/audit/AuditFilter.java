package headertank.app.audit;

import java.time.LocalDate;

/**
 * Which lines of the trail somebody wants to see.
 *
 * @param account id of who did it; null for everybody, the program included
 * @param action token of what was done, empty for all
 * @param from first day, null for the beginning
 * @param until last day, null for today
 */
record AuditFilter(Long account, String action, LocalDate from, LocalDate until) {

    AuditFilter {
        action = action == null ? "" : action.strip();
    }
}
