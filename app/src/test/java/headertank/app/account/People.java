package headertank.app.account;

import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.authentication;

import headertank.app.shop.Role;
import headertank.app.shop.Shops;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.core.userdetails.UserDetails;
import org.springframework.stereotype.Component;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** Shops and signed-in people for tests: {@code mvc.perform(get("/cars").with(people.in(shop, FRONT_DESK)))}. */
@Component
public class People {

    public static final String PASSWORD = "correct-horse-1";
    private static final AtomicInteger COUNT = new AtomicInteger();

    private final Accounts accounts;
    private final Shops shops;

    People(Accounts accounts, Shops shops) {
        this.accounts = accounts;
        this.shops = shops;
    }

    public long aShop() {
        return shops.found("Test shop " + COUNT.incrementAndGet(), "UTC", false);
    }

    /** Adds an account; returns its login. */
    public String anAccount(long shop, Role... roles) {
        String login = "person" + COUNT.incrementAndGet();
        accounts.createIn(shop, login, "Person " + login, PASSWORD, Set.of(roles));
        return login;
    }

    /** Somebody new with these roles, signed in for one MockMvc request after the other. */
    public RequestPostProcessor in(long shop, Role... roles) {
        return authentication(signedIn(anAccount(shop, roles)));
    }

    /** Signs somebody in on the calling thread, for tests that call services; returns the account's id. */
    public long actAs(long shop, Role... roles) {
        Authentication authentication = signedIn(anAccount(shop, roles));
        SecurityContextHolder.getContext().setAuthentication(authentication);
        return ((SignedIn) authentication.getPrincipal()).accountId();
    }

    /** The same as somebody there is. */
    public void actAs(String login) {
        SecurityContextHolder.getContext().setAuthentication(signedIn(login));
    }

    public static void nobody() {
        SecurityContextHolder.clearContext();
    }

    private Authentication signedIn(String login) {
        UserDetails user = accounts.loadUserByUsername(login);
        return UsernamePasswordAuthenticationToken.authenticated(user, null, user.getAuthorities());
    }
}
