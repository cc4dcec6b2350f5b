package headertank.app.journey;

import headertank.app.account.RouteRights;
import headertank.app.shop.Role;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.springframework.http.HttpMethod;

/**
 * An address for every page there is. A new page gets its line in {@link #ADDRESSES}; what a browser does not show as a page
 * stands in {@link #NO_PAGES} with the reason.
 */
final class PageExamples {

    /**
     * A page to look at.
     *
     * @param name of its pictures
     * @param role who looks; empty for nobody signed in
     * @param address with {@code <car>} and the like where the demo shop's ids go
     */
    record Example(String name, Optional<Role> role, String address) {
        String path(Map<String, Long> ids) {
            String path = address;
            for (var id : ids.entrySet()) {
                path = path.replace("<" + id.getKey() + ">", id.getValue().toString());
            }
            return path;
        }
    }

    /** The one example that is meant to fail. */
    static final String NOT_FOUND = "error-not-found";

    /** Pattern of the route to address; a pattern alone when it holds no ids. */
    private static final Map<String, String> ADDRESSES = Map.ofEntries(
            same("/"),
            same("/login"),
            same("/offline"),
            same("/accounts"),
            same("/first-steps"),
            same("/glossary"),
            Map.entry("/audit", "/audit?action=car.added"),
            same("/account/password"),
            same("/audit/seals"),
            same("/backup"),
            same("/cars"),
            same("/cars/new"),
            Map.entry("/cars/{id}", "/cars/<car>"),
            Map.entry("/cars/{id}/edit", "/cars/<car>/edit"),
            Map.entry("/cars/{id}/spec", "/cars/<car>/spec"),
            Map.entry("/cars/{id}/revisions/{number}", "/cars/<car>/revisions/2"),
            Map.entry("/cars/{id}/history", "/cars/<car>/history"),
            Map.entry("/cars/{id}/compare", "/cars/<car>/compare?from=1&to=2"),
            Map.entry("/cars/{id}/revisions/{number}/check", "/cars/<other>/revisions/1/check"),
            Map.entry("/cars/{id}/jobs/new", "/cars/<car>/jobs/new"),
            Map.entry("/cars/{id}/incidents/new", "/cars/<car>/incidents/new"),
            Map.entry("/cars/{id}/logs", "/cars/<car>/logs"),
            Map.entry("/cars/{id}/logs/{log}", "/cars/<car>/logs/<log>"),
            Map.entry("/cars/{id}/evidence", "/cars/<car>/evidence"),
            Map.entry("/cars/{id}/evidence/next", "/cars/<car>/evidence/next"),
            same("/intake"),
            Map.entry("/cars/{id}/spec/similar", "/cars/<other>/spec/similar"),
            same("/parts"),
            Map.entry("/parts/new", "/parts/new?kind=FAN"),
            same("/parts/import"),
            Map.entry("/parts/{id}", "/parts/<part>"),
            Map.entry("/parts/{id}/edit", "/parts/<part>/edit"),
            Map.entry("/parts/{id}/compare", "/parts/<part>/compare?with=<like>"),
            same("/duties"),
            same("/duties/new"),
            same("/duties/from-log"),
            Map.entry("/duties/{id}/edit", "/duties/hill-day/edit"),
            Map.entry("/duties/{id}/list", "/duties/drift/list"),
            same("/settings"),
            Map.entry("/checks/{id}/drawing", "/checks/<check>/drawing"),
            Map.entry("/checks/{id}/handover", "/checks/<check>/handover"),
            Map.entry("/checks/{id}/handover/day", "/checks/<check>/handover/day"),
            Map.entry("/checks/{id}/handover/decision", "/checks/<check>/handover/decision"),
            same("/customers"),
            same("/customers/new"),
            Map.entry("/customers/{id}", "/customers/<customer>"),
            Map.entry("/customers/{id}/edit", "/customers/<customer>/edit"),
            Map.entry("/checks/{id}", "/checks/<check>"),
            Map.entry("/checks/{id}/reasons", "/checks/<check>/reasons"),
            Map.entry("/checks/{id}/run", "/checks/<check>/run"),
            Map.entry("/checks/{id}/what-if", "/checks/<check>/what-if"),
            Map.entry("/checks/{id}/flags", "/checks/<check>/flags"),
            Map.entry("/checks/{id}/assumed", "/checks/<check>/assumed"),
            Map.entry("/checks/{id}/working", "/checks/<check>/working"),
            Map.entry("/checks/{id}/sign", "/checks/<check>/sign"),
            same("/incidents"),
            Map.entry("/incidents/{id}", "/incidents/<incident>"),
            same("/jobs"),
            same("/jobs/unsigned"),
            same("/jobs/overdue"),
            Map.entry("/jobs/{id}", "/jobs/<job>"),
            Map.entry("/jobs/{id}/hand-over", "/jobs/<job>/hand-over"),
            Map.entry("/jobs/{id}/edit", "/jobs/<job>/edit"));

    /** Pages that look different for another role or in another state, beside the first of their route. */
    private static final List<Example> FURTHER = List.of(
            new Example("start-technician", Optional.of(Role.TECHNICIAN), "/"),
            new Example("start-owner", Optional.of(Role.OWNER), "/"),
            new Example("cars-one-spec-first", Optional.of(Role.FRONT_DESK), "/cars/<bare>/spec"),
            new Example("checks-one-technician", Optional.of(Role.TECHNICIAN), "/checks/<check>"),
            new Example("checks-one-sign-technician", Optional.of(Role.TECHNICIAN), "/checks/<check>/sign"),
            new Example("cars-one-spec-typed-in", Optional.of(Role.TECHNICIAN), "/cars/<car>/spec?change=shroud"),
            new Example("checks-one-handover-entries", Optional.of(Role.TECHNICIAN), "/checks/<check>/handover"),
            new Example(
                    "checks-one-handover-last-word", Optional.of(Role.TECHNICIAN), "/checks/<check>/handover/decision"),
            new Example("checks-one-signed", Optional.of(Role.TECHNICIAN), "/checks/<signed>"),
            new Example("checks-one-sign-signed", Optional.of(Role.TECHNICIAN), "/checks/<signed>/sign"),
            new Example("cars-nothing-found", Optional.of(Role.FRONT_DESK), "/cars?q=no+such+car"),
            new Example(NOT_FOUND, Optional.of(Role.FRONT_DESK), "/cars/999999"));

    /** What is no page, and why. */
    static final Map<String, String> NO_PAGES = Map.ofEntries(
            Map.entry("/first-owner", "only there while the database is empty: the walk begins with it"),
            Map.entry("/cars/{id}/compare/costs", "a fragment of the page at /cars/{id}/compare"),
            Map.entry("/cars/{id}/evidence/lesson", "a fragment of the page at /cars/{id}/evidence"),
            Map.entry("/cars/{id}/evidence/next/found", "a fragment of the page at /cars/{id}/evidence/next"),
            Map.entry("/checks/{id}/since", "a fragment of the page at /checks/{id}"),
            Map.entry("/incidents/{id}/causes", "a fragment of the page at /incidents/{id}"),
            Map.entry("/incidents/{id}/since", "a fragment of the page at /incidents/{id}"),
            Map.entry("/customers/choices", "a fragment of the form at /cars/new"),
            Map.entry("/checks/{id}/sheet.pdf", "a download"),
            Map.entry("/cars/{id}/label.pdf", "a download"),
            Map.entry("/parts/export.csv", "a download"),
            Map.entry("/audit.csv", "a download"),
            Map.entry("/jobs.csv", "a download"),
            Map.entry("/parts/{id}/cars.csv", "a download"),
            Map.entry("/duties/{id}/csv", "a download"),
            Map.entry("/handover-photos/{id}", "a picture"),
            Map.entry("/handover-photos/{id}/small", "a picture"));

    private PageExamples() {}

    private static Map.Entry<String, String> same(String pattern) {
        return Map.entry(pattern, pattern);
    }

    private static List<RouteRights.Row> pages() {
        return RouteRights.rows().stream()
                .filter(r -> r.method().equals(HttpMethod.GET))
                .toList();
    }

    /** Patterns that have neither an address nor a reason, and addresses and reasons of patterns that are gone. */
    static List<String> gaps() {
        var routes = pages().stream().map(r -> r.pattern().getPatternString()).collect(Collectors.toSet());
        var known = new TreeSet<>(ADDRESSES.keySet());
        known.addAll(NO_PAGES.keySet());
        var gaps = new ArrayList<String>();
        routes.stream()
                .filter(r -> !known.contains(r))
                .map(r -> "no example: " + r)
                .forEach(gaps::add);
        known.stream()
                .filter(k -> !routes.contains(k))
                .map(k -> "no such route: " + k)
                .forEach(gaps::add);
        return gaps;
    }

    /** All of them, by who looks at them, so that each person signs in once. */
    static Map<Optional<Role>, List<Example>> byPerson() {
        List<Example> all = new ArrayList<>();
        for (RouteRights.Row row : pages()) {
            String pattern = row.pattern().getPatternString();
            if (ADDRESSES.containsKey(pattern)) {
                Optional<Role> first = row.roles().stream().min(Comparator.naturalOrder());
                all.add(new Example(name(pattern), first, ADDRESSES.get(pattern)));
            }
        }
        all.addAll(FURTHER);
        Map<Optional<Role>, List<Example>> byPerson =
                new TreeMap<>(Comparator.comparing(r -> r.map(Role::ordinal).orElse(-1)));
        all.forEach(
                e -> byPerson.computeIfAbsent(e.role(), r -> new ArrayList<>()).add(e));
        return byPerson;
    }

    /** All that somebody with this role may open, and what looks different for them. */
    static List<Example> of(Role role) {
        List<Example> all = new ArrayList<>();
        for (RouteRights.Row row : pages()) {
            String pattern = row.pattern().getPatternString();
            if (ADDRESSES.containsKey(pattern) && row.roles().contains(role)) {
                all.add(new Example(name(pattern), Optional.of(role), ADDRESSES.get(pattern)));
            }
        }
        FURTHER.stream()
                .filter(e -> e.role().filter(role::equals).isPresent())
                .filter(e -> all.stream().noneMatch(a -> a.address().equals(e.address())))
                .forEach(all::add);
        return all;
    }

    /** {@code /cars/{id}/edit} is {@code cars-one-edit}. */
    static String name(String pattern) {
        String name =
                pattern.replaceAll("\\{[^}]+}", "one").replaceAll("^/|/$", "").replace('/', '-');
        return name.isEmpty() ? "start" : name;
    }
}
