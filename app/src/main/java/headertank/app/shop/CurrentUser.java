package headertank.app.shop;

import java.util.Optional;
import org.springframework.security.authentication.AuthenticationCredentialsNotFoundException;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.stereotype.Component;

/** Who is asking. Services take the shop from here, never from the request. */
@Component
public class CurrentUser {

    /** Empty when nobody has signed in. */
    public Optional<Member> member() {
        var authentication = SecurityContextHolder.getContext().getAuthentication();
        return authentication != null && authentication.getPrincipal() instanceof Member member
                ? Optional.of(member)
                : Optional.empty();
    }

    /** The member; refused when nobody has signed in. */
    public Member require() {
        return member().orElseThrow(() -> new AuthenticationCredentialsNotFoundException("nobody has signed in"));
    }

    public long accountId() {
        return require().accountId();
    }

    public long shopId() {
        return require().shopId();
    }

    public boolean has(Role role) {
        return member().map(m -> m.roles().contains(role)).orElse(false);
    }
}
