package headertank.app.account;

import headertank.app.shop.Role;
import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.Version;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Somebody who may sign in. Never deleted, only switched off. */
@Entity
class Account {

    /** How long a password that was made up waits for its one sign-in; modelling choice. */
    private static final Duration ONE_TIME_LASTS = Duration.ofDays(7);

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    private long shopId;
    private String login;
    private String name;
    private String passwordHash;
    private boolean active = true;

    /** Whether the program has made the password up. */
    private boolean passwordOnce;

    private Instant passwordMadeAt;

    @Column(insertable = false, updatable = false)
    private Instant passwordUsedAt;

    /** Written by statements of their own: signing in or choosing a language is no change of the account. */
    @Column(insertable = false, updatable = false)
    private Instant lastSignInAt;

    @Column(insertable = false, updatable = false)
    private String language;

    @ElementCollection(fetch = FetchType.EAGER)
    @CollectionTable(name = "account_role", joinColumns = @JoinColumn(name = "account_id"))
    @Column(name = "role")
    @Enumerated(EnumType.STRING)
    private Set<Role> roles = new HashSet<>();

    @Version
    private int version;

    protected Account() {}

    Account(long shopId, String login, String name, String passwordHash, Set<Role> roles) {
        this.shopId = shopId;
        this.login = plainLogin(login);
        this.name = name.strip();
        this.passwordHash = passwordHash;
        this.roles = new HashSet<>(roles);
    }

    /** Logins are told apart without regard to capitals. */
    static String plainLogin(String login) {
        return login.strip().toLowerCase(Locale.ROOT);
    }

    Long id() {
        return id;
    }

    long shopId() {
        return shopId;
    }

    String login() {
        return login;
    }

    String name() {
        return name;
    }

    String passwordHash() {
        return passwordHash;
    }

    boolean active() {
        return active;
    }

    Optional<Instant> lastSignInAt() {
        return Optional.ofNullable(lastSignInAt);
    }

    /** Of pages; empty for the shop's. */
    Optional<String> language() {
        return Optional.ofNullable(language);
    }

    Set<Role> roles() {
        return roles.isEmpty() ? EnumSet.noneOf(Role.class) : EnumSet.copyOf(roles);
    }

    void holdsExactly(Set<Role> wanted) {
        roles.retainAll(wanted);
        roles.addAll(wanted);
    }

    void switchTo(boolean on) {
        active = on;
    }

    void changePassword(String hash) {
        passwordHash = hash;
        passwordOnce = false;
    }

    /** Takes a password that is for one sign-in. */
    void takeOneTimePassword(String hash, Instant at) {
        passwordHash = hash;
        passwordOnce = true;
        passwordMadeAt = at;
    }

    /** The same password, hashed anew. */
    void renewHash(String hash) {
        passwordHash = hash;
    }

    boolean passwordOnce() {
        return passwordOnce;
    }

    /** Whether a password that was made up has done its work, or waited too long for it. */
    boolean passwordSpent(Instant now) {
        boolean used = passwordUsedAt != null && !passwordUsedAt.isBefore(passwordMadeAt);
        return passwordOnce && (used || passwordMadeAt.plus(ONE_TIME_LASTS).isBefore(now));
    }
}
