package headertank.app.account;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.request;

import headertank.app.database.DatabaseTest;
import headertank.app.shop.Role;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.HttpMethod;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.RequestPostProcessor;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;

/** The table of rights against the routes there are, and against what really happens. */
@DatabaseTest
class RouteRightsIT {

    @Autowired
    List<RequestMappingHandlerMapping> mappings;

    @Autowired
    MockMvc mvc;

    @Autowired
    People people;

    record Route(HttpMethod method, String pattern) {}

    Map<Role, RequestPostProcessor> someone;

    @BeforeEach
    void somebodyOfEachRole() {
        long shop = people.aShop();
        someone = new EnumMap<>(Role.class);
        for (Role role : Role.values()) {
            someone.put(role, people.in(shop, role));
        }
    }

    @Test
    void everyRouteHasARowAndEveryRowARoute() {
        List<Route> rows = RouteRights.rows().stream()
                .map(r -> new Route(r.method(), r.pattern().getPatternString()))
                .toList();
        assertThat(rows).doesNotHaveDuplicates().containsExactlyInAnyOrderElementsOf(routes());
    }

    @Test
    void everyRouteOpensForTheRolesOfItsRowAndForNobodyElse() throws Exception {
        List<String> wrong = new ArrayList<>();
        for (RouteRights.Row row : RouteRights.rows()) {
            for (Role role : Role.values()) {
                boolean opened = status(row, someone.get(role)) != 403;
                if (opened != row.allows(Set.of(role))) {
                    wrong.add(row.method() + " " + row.pattern() + " as " + role + ": " + (opened ? "open" : "shut"));
                }
            }
            boolean sentAway = isSentAway(row);
            if (sentAway == row.open()) {
                wrong.add(row.method() + " " + row.pattern() + " as nobody: " + (sentAway ? "shut" : "open"));
            }
        }
        assertThat(wrong).isEmpty();
    }

    private int status(RouteRights.Row row, RequestPostProcessor who) throws Exception {
        return mvc.perform(request(row.method(), address(row)).with(csrf()).with(who))
                .andReturn()
                .getResponse()
                .getStatus();
    }

    private boolean isSentAway(RouteRights.Row row) throws Exception {
        var response = mvc.perform(request(row.method(), address(row)).with(csrf()))
                .andReturn()
                .getResponse();
        String to = response.getRedirectedUrl();
        boolean toLogin = response.getStatus() == 302 && to != null && to.endsWith("/login");
        return toLogin && !address(row).equals("/first-owner");
    }

    /** An address for the pattern; the ids name nothing, so that a permitted call ends as "not found" and changes nothing. */
    private static String address(RouteRights.Row row) {
        return row.pattern().getPatternString().replaceAll("\\{[^}]+}", "999999");
    }

    private List<Route> routes() {
        List<Route> found = new ArrayList<>();
        for (RequestMappingHandlerMapping mapping : mappings) {
            for (RequestMappingInfo info : mapping.getHandlerMethods().keySet()) {
                for (String pattern : info.getPatternValues()) {
                    for (RequestMethod method : info.getMethodsCondition().getMethods()) {
                        found.add(new Route(method.asHttpMethod(), pattern));
                    }
                    if (info.getMethodsCondition().getMethods().isEmpty() && !pattern.equals("/error")) {
                        throw new AssertionError("a route must say its method: " + pattern);
                    }
                }
            }
        }
        return found.stream().distinct().toList();
    }
}
