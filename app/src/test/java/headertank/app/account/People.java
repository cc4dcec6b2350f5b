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
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Component;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** Shops and signed-in people for tests: {@code mvc.perform(get("/cars").with(people.in(shop, FRONT_DESK)))}. */
@Component
public class People {

    public static final String PASSWORD = "correct-horse-1";
    private static final AtomicInteger COUNT = new AtomicInteger();

    /** One for all: a hash is made to take long, and most of these people never sign in. */
    private static String hash;

    private final Accounts accounts;
    private final AccountRepository stored;
    private final PasswordEncoder passwords;
    private final Shops shops;

    People(Accounts accounts, AccountRepository stored, PasswordEncoder passwords, Shops shops) {
        this.accounts = accounts;
        this.stored = stored;
        this.passwords = passwords;
        this.shops = shops;
    }

    public long aShop() {
        return shops.found("Test shop " + COUNT.incrementAndGet(), "UTC", false);
    }

    /** Adds an account; returns its login. */
    public String anAccount(long shop, Role... roles) {
        String login = "person" + COUNT.incrementAndGet();
        stored.save(new Account(shop, login, "Person " + login, hash(passwords), Set.of(roles)));
        return login;
    }

    private static synchronized String hash(PasswordEncoder passwords) {
        if (hash == null) {
            hash = passwords.encode(PASSWORD);
        }
        return hash;
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
