package headertank.app.account;

import static headertank.app.shop.Role.FRONT_DESK;
import static headertank.app.shop.Role.OWNER;
import static headertank.app.shop.Role.TECHNICIAN;
import static org.springframework.http.HttpMethod.GET;
import static org.springframework.http.HttpMethod.POST;

import headertank.app.shop.Role;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.springframework.http.HttpMethod;
import org.springframework.http.server.PathContainer;
import org.springframework.web.util.pattern.PathPattern;
import org.springframework.web.util.pattern.PathPatternParser;

/**
 * The one table of who may use what. A route without a row is closed to everybody, and a test fails until it has one. The
 * order of rows does not matter: the most specific pattern decides, whatever its place.
 */
public final class RouteRights {

    /**
     * One line of the table.
     *
     * @param roles who may use it, any one of them suffices; empty with {@code open} means everybody, signed in or not
     */
    public record Row(HttpMethod method, PathPattern pattern, Set<Role> roles, boolean open) {
        boolean matches(HttpMethod asked, String path) {
            boolean sameMethod = method.equals(asked) || (method.equals(GET) && asked.equals(HttpMethod.HEAD));
            return sameMethod && pattern.matches(PathContainer.parsePath(path));
        }

        boolean allows(Set<Role> held) {
            return open || roles.stream().anyMatch(held::contains);
        }
    }

    private static final Role[] EVERY_MEMBER = Role.values();

    private static final List<Row> ROWS = sorted(List.of(
            // signing in
            open(GET, "/login"),
            open(GET, "/first-owner"),
            open(POST, "/first-owner"),
            open(POST, "/sign-in-again"),
            open(POST, "/go-on"),
            open(POST, "/language"),
            open(GET, "/offline"),
            row(GET, "/", EVERY_MEMBER),
            // accounts
            row(GET, "/accounts", OWNER),
            row(POST, "/accounts", OWNER),
            row(POST, "/accounts/{id}/roles", OWNER),
            row(POST, "/accounts/{id}/switch", OWNER),
            row(POST, "/accounts/{id}/password", OWNER),
            row(GET, "/glossary", EVERY_MEMBER),
            row(GET, "/first-steps", OWNER),
            // who did what
            row(GET, "/audit", OWNER),
            row(GET, "/audit.csv", OWNER),
            row(GET, "/audit/seals", OWNER),
            row(GET, "/backup", OWNER),
            row(POST, "/backup", OWNER),
            // settings and duties of the shop
            row(GET, "/settings", OWNER),
            row(POST, "/settings", OWNER),
            row(GET, "/duties", EVERY_MEMBER),
            row(GET, "/duties/{id}/csv", EVERY_MEMBER),
            row(GET, "/duties/new", OWNER),
            row(POST, "/duties", OWNER),
            row(GET, "/duties/{id}/edit", OWNER),
            row(POST, "/duties/{id}/switch", OWNER),
            row(GET, "/duties/{id}/list", OWNER),
            row(POST, "/duties/{id}/list", OWNER),
            row(GET, "/duties/from-log", OWNER),
            row(POST, "/duties/from-log", OWNER),
            row(GET, "/account/password", EVERY_MEMBER),
            row(POST, "/account/password", EVERY_MEMBER),
            // customers and cars
            row(GET, "/intake", FRONT_DESK),
            row(POST, "/intake", FRONT_DESK),
            row(GET, "/cars", EVERY_MEMBER),
            row(GET, "/cars/{id}", EVERY_MEMBER),
            row(GET, "/cars/new", FRONT_DESK),
            row(POST, "/cars", FRONT_DESK),
            row(GET, "/cars/{id}/edit", FRONT_DESK),
            row(POST, "/cars/{id}", FRONT_DESK),
            // specs and their revisions; a technician saves what-ifs
            row(GET, "/cars/{id}/spec", FRONT_DESK, TECHNICIAN),
            row(POST, "/cars/{id}/spec", FRONT_DESK, TECHNICIAN),
            row(POST, "/cars/{id}/spec/preview", FRONT_DESK, TECHNICIAN),
            row(GET, "/cars/{id}/spec/similar", FRONT_DESK, TECHNICIAN),
            row(GET, "/cars/{id}/revisions/{number}", EVERY_MEMBER),
            row(GET, "/cars/{id}/history", EVERY_MEMBER),
            row(GET, "/cars/{id}/compare", EVERY_MEMBER),
            row(GET, "/cars/{id}/compare/costs", EVERY_MEMBER),
            // logs of a car
            row(GET, "/cars/{id}/logs", EVERY_MEMBER),
            row(POST, "/cars/{id}/logs", FRONT_DESK, TECHNICIAN),
            row(GET, "/cars/{id}/logs/{log}", EVERY_MEMBER),
            row(POST, "/cars/{id}/logs/{log}/confirm", FRONT_DESK, TECHNICIAN),
            // evidence of a car
            row(GET, "/cars/{id}/evidence", EVERY_MEMBER),
            row(GET, "/cars/{id}/evidence/lesson", EVERY_MEMBER),
            row(GET, "/cars/{id}/evidence/next", EVERY_MEMBER),
            row(GET, "/cars/{id}/evidence/next/found", EVERY_MEMBER),
            row(POST, "/cars/{id}/evidence/readings", FRONT_DESK, TECHNICIAN),
            row(POST, "/cars/{id}/evidence/logs", FRONT_DESK, TECHNICIAN),
            row(POST, "/cars/{id}/evidence/{piece}/switch", FRONT_DESK, TECHNICIAN),
            row(GET, "/customers", EVERY_MEMBER),
            row(GET, "/customers/{id}", EVERY_MEMBER),
            row(GET, "/customers/choices", FRONT_DESK),
            row(GET, "/customers/new", FRONT_DESK),
            row(POST, "/customers", FRONT_DESK),
            row(GET, "/customers/{id}/edit", FRONT_DESK),
            row(POST, "/customers/{id}", FRONT_DESK),
            // the catalogue of parts
            row(GET, "/parts", EVERY_MEMBER),
            row(GET, "/parts/{id}", EVERY_MEMBER),
            row(GET, "/parts/{id}/compare", EVERY_MEMBER),
            row(GET, "/parts/{id}/cars.csv", FRONT_DESK, OWNER),
            row(POST, "/parts/{id}/recall/{carId}", FRONT_DESK, OWNER),
            row(GET, "/parts/export.csv", EVERY_MEMBER),
            row(GET, "/parts/new", OWNER),
            row(POST, "/parts", OWNER),
            row(GET, "/parts/{id}/edit", OWNER),
            row(POST, "/parts/{id}", OWNER),
            row(POST, "/parts/{id}/retire", OWNER),
            row(GET, "/parts/import", OWNER),
            row(POST, "/parts/import", OWNER),
            row(POST, "/parts/import/confirm", OWNER),
            row(POST, "/cars/{id}/spec/fit", FRONT_DESK, TECHNICIAN),
            // checks and their sheets
            row(GET, "/cars/{id}/revisions/{number}/check", EVERY_MEMBER),
            row(POST, "/cars/{id}/revisions/{number}/checks", TECHNICIAN),
            row(GET, "/checks/{id}", EVERY_MEMBER),
            row(GET, "/checks/{id}/since", EVERY_MEMBER),
            row(GET, "/checks/{id}/reasons", EVERY_MEMBER),
            row(GET, "/checks/{id}/run", EVERY_MEMBER),
            row(GET, "/checks/{id}/what-if", EVERY_MEMBER),
            row(GET, "/checks/{id}/flags", EVERY_MEMBER),
            row(GET, "/checks/{id}/assumed", EVERY_MEMBER),
            row(GET, "/checks/{id}/working", EVERY_MEMBER),
            row(GET, "/checks/{id}/sign", EVERY_MEMBER),
            row(POST, "/checks/{id}/sign-off", TECHNICIAN),
            row(GET, "/checks/{id}/sheet.pdf", EVERY_MEMBER),
            // handing over
            row(GET, "/checks/{id}/handover", EVERY_MEMBER),
            row(GET, "/checks/{id}/handover/day", TECHNICIAN),
            row(POST, "/checks/{id}/handover/day", TECHNICIAN),
            row(POST, "/checks/{id}/handover/entries", TECHNICIAN),
            row(POST, "/checks/{id}/handover/photos", TECHNICIAN),
            row(POST, "/checks/{id}/handover/faults/{fault}", TECHNICIAN, OWNER),
            row(GET, "/checks/{id}/handover/decision", EVERY_MEMBER),
            row(POST, "/checks/{id}/handover/decision", TECHNICIAN),
            row(GET, "/handover-photos/{id}", EVERY_MEMBER),
            row(GET, "/handover-photos/{id}/small", EVERY_MEMBER),
            row(GET, "/checks/{id}/drawing", EVERY_MEMBER),
            row(GET, "/cars/{id}/label.pdf", EVERY_MEMBER),
            // jobs
            row(GET, "/jobs", EVERY_MEMBER),
            row(GET, "/jobs.csv", FRONT_DESK, OWNER),
            row(GET, "/jobs/{id}", EVERY_MEMBER),
            row(GET, "/jobs/unsigned", OWNER),
            row(GET, "/jobs/overdue", OWNER),
            row(GET, "/cars/{id}/jobs/new", FRONT_DESK, OWNER),
            row(POST, "/cars/{id}/jobs", FRONT_DESK, OWNER),
            row(GET, "/jobs/{id}/edit", FRONT_DESK, OWNER),
            row(POST, "/jobs/{id}", FRONT_DESK, OWNER),
            row(POST, "/jobs/{id}/stop", FRONT_DESK, OWNER),
            row(POST, "/jobs/{id}/resume", FRONT_DESK, OWNER),
            row(GET, "/jobs/{id}/hand-over", FRONT_DESK, OWNER),
            row(POST, "/jobs/{id}/hand-over", FRONT_DESK, OWNER),
            row(POST, "/jobs/{id}/take-back", OWNER),
            // a car came back hot
            row(GET, "/cars/{id}/incidents/new", FRONT_DESK, TECHNICIAN),
            row(POST, "/cars/{id}/incidents", FRONT_DESK, TECHNICIAN),
            row(GET, "/incidents", EVERY_MEMBER),
            row(GET, "/incidents/{id}", EVERY_MEMBER),
            row(GET, "/incidents/{id}/causes", EVERY_MEMBER),
            row(POST, "/incidents/{id}/answers", FRONT_DESK, TECHNICIAN),
            row(GET, "/incidents/{id}/since", EVERY_MEMBER)));

    private RouteRights() {}

    private static Row row(HttpMethod method, String pattern, Role... roles) {
        return new Row(method, PathPatternParser.defaultInstance.parse(pattern), Set.of(roles), false);
    }

    private static Row open(HttpMethod method, String pattern) {
        return new Row(method, PathPatternParser.defaultInstance.parse(pattern), Set.of(), true);
    }

    private static List<Row> sorted(List<Row> rows) {
        return rows.stream()
                .sorted(Comparator.comparing(Row::pattern, PathPattern.SPECIFICITY_COMPARATOR))
                .toList();
    }

    /** All rows, most specific first. */
    public static List<Row> rows() {
        return ROWS;
    }

    /** The row that decides on a request. */
    public static Optional<Row> deciding(HttpMethod method, String path) {
        return ROWS.stream().filter(r -> r.matches(method, path)).findFirst();
    }

    /** Whether somebody with these roles may open this page; for links that only lead where one may go. */
    public static boolean mayOpen(String path, Set<Role> held) {
        return deciding(GET, path).map(r -> r.allows(held)).orElse(false);
    }
}
