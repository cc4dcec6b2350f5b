package headertank.app.account;

import headertank.app.shop.Member;
import headertank.app.shop.Role;
import java.time.Instant;
import java.util.Collection;
import java.util.EnumSet;
import java.util.Set;
import org.springframework.security.core.CredentialsContainer;
import org.springframework.security.core.GrantedAuthority;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.springframework.security.core.userdetails.UserDetails;

/** What a session remembers of an account. */
final class SignedIn implements UserDetails, Member, CredentialsContainer {

    private static final long serialVersionUID = 1L;

    private final long accountId;
    private final long shopId;
    private final String login;
    private final String name;
    private final EnumSet<Role> roles;
    private final boolean active;
    private final boolean mustChangePassword;
    private transient boolean passwordSpent;
    private String passwordHash;

    SignedIn(Account account) {
        accountId = account.id();
        shopId = account.shopId();
        login = account.login();
        name = account.name();
        roles = EnumSet.noneOf(Role.class);
        roles.addAll(account.roles());
        active = account.active();
        passwordHash = account.passwordHash();
        mustChangePassword = account.passwordOnce();
        passwordSpent = account.passwordSpent(Instant.now());
    }

    @Override
    public long accountId() {
        return accountId;
    }

    @Override
    public long shopId() {
        return shopId;
    }

    @Override
    public String displayName() {
        return name;
    }

    @Override
    public Set<Role> roles() {
        return EnumSet.copyOf(roles);
    }

    @Override
    public Collection<? extends GrantedAuthority> getAuthorities() {
        return roles.stream()
                .map(r -> new SimpleGrantedAuthority(r.authority()))
                .toList();
    }

    @Override
    public String getUsername() {
        return login;
    }

    @Override
    public String getPassword() {
        return passwordHash;
    }

    /** Whether nothing opens before the password that was made up is replaced. */
    boolean mustChangePassword() {
        return mustChangePassword;
    }

    /** A password that was made up opens once. */
    @Override
    public boolean isCredentialsNonExpired() {
        return !passwordSpent;
    }

    @Override
    public boolean isEnabled() {
        return active;
    }

    @Override
    public void eraseCredentials() {
        passwordHash = null;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SignedIn s && s.accountId == accountId;
    }

    @Override
    public int hashCode() {
        return Long.hashCode(accountId);
    }
}
