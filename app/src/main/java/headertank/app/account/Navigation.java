package headertank.app.account;

import headertank.app.shop.CurrentUser;
import java.util.List;
import java.util.Set;
import org.springframework.stereotype.Component;

/** The links at the top of each page: only those that lead where the signed-in person may go. */
@Component("navigation")
public class Navigation {

    /** @param labelKey key in the message files */
    public record Entry(String labelKey, String path) {}

    private static final List<Entry> ENTRIES = List.of(
            new Entry("nav.cars", "/cars"),
            new Entry("nav.customers", "/customers"),
            new Entry("nav.accounts", "/accounts"));

    private final CurrentUser user;

    Navigation(CurrentUser user) {
        this.user = user;
    }

    public List<Entry> entries() {
        return ENTRIES.stream().filter(e -> mayOpen(e.path())).toList();
    }

    /** For buttons and links inside pages: {@code th:if="${@navigation.mayOpen('/cars/new')}"}. */
    public boolean mayOpen(String path) {
        return RouteRights.mayOpen(path, user.member().map(m -> m.roles()).orElse(Set.of()));
    }
}
