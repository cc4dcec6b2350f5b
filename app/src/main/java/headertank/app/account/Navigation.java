package headertank.app.account;

import headertank.app.shop.CurrentUser;
import headertank.app.shop.Role;
import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Set;
import org.springframework.stereotype.Component;

/** The links at the top of each page: only those that lead where the signed-in person may go. */
@Component("navigation")
public class Navigation {

    /** @param labelKey key in the message files */
    public record Entry(String labelKey, String path) {}

    private static final List<Entry> ENTRIES = List.of(
            new Entry("nav.jobs", "/jobs"),
            new Entry("nav.intake", "/intake"),
            new Entry("nav.cars", "/cars"),
            new Entry("nav.customers", "/customers"),
            new Entry("nav.incidents", "/incidents"),
            new Entry("nav.parts", "/parts"),
            new Entry("nav.duties", "/duties"),
            new Entry("nav.settings", "/settings"),
            new Entry("nav.accounts", "/accounts"),
            new Entry("nav.audit", "/audit"));

    private final CurrentUser user;
    private final HttpServletRequest request;

    Navigation(CurrentUser user, HttpServletRequest request) {
        this.user = user;
        this.request = request;
    }

    /** Whether the page on show belongs to this entry. */
    public boolean leadsHere(Entry entry) {
        String start = request.getContextPath() + entry.path();
        return request.getRequestURI().equals(start) || request.getRequestURI().startsWith(start + "/");
    }

    /** Whether whoever looks works at the cars and nowhere else: their tablet is touched, and read in the sun. */
    public boolean inTheWorkshop() {
        return user.member().map(m -> m.roles().equals(Set.of(Role.TECHNICIAN))).orElse(false);
    }

    /** Whether the browser may keep pages for whoever looks; see {@link KeptPages}. */
    public boolean keepsPages() {
        return user.has(Role.TECHNICIAN);
    }

    /** Whether whoever looks calls customers: in the workshop nobody needs their numbers. */
    public boolean seesNumbers() {
        return user.has(Role.FRONT_DESK) || user.has(Role.OWNER);
    }

    public List<Entry> entries() {
        return ENTRIES.stream().filter(e -> mayOpen(e.path())).toList();
    }

    /** For buttons and links inside pages: {@code th:if="${@navigation.mayOpen('/cars/new')}"}. */
    public boolean mayOpen(String path) {
        return RouteRights.mayOpen(path, user.member().map(m -> m.roles()).orElse(Set.of()));
    }
}
