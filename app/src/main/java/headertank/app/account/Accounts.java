package headertank.app.account;

import headertank.app.account.password.OneTimePassword;
import headertank.app.audit.AuditTrail;
import headertank.app.form.FormKeys;
import headertank.app.problem.ConflictException;
import headertank.app.problem.NotFoundException;
import headertank.app.shop.CurrentUser;
import headertank.app.shop.Role;
import headertank.app.shop.Shops;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.context.event.EventListener;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.authentication.event.InteractiveAuthenticationSuccessEvent;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.userdetails.UserDetails;
import org.springframework.security.core.userdetails.UserDetailsPasswordService;
import org.springframework.security.core.userdetails.UserDetailsService;
import org.springframework.security.core.userdetails.UsernameNotFoundException;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.session.FindByIndexNameSessionRepository;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Everything that is done with accounts. */
@Service
public class Accounts implements UserDetailsService, UserDetailsPasswordService {

    /**
     * What pages show of an account.
     *
     * @param lastSignIn null when the person has never signed in
     */
    public record Line(long id, String login, String name, Set<Role> roles, boolean active, Instant lastSignIn) {}

    private final AccountRepository accounts;
    private final Shops shops;
    private final CurrentUser user;
    private final FormKeys forms;
    private final AuditTrail audit;
    private final PasswordEncoder passwords;
    private final FindByIndexNameSessionRepository<?> sessions;

    Accounts(
            AccountRepository accounts,
            Shops shops,
            CurrentUser user,
            AuditTrail audit,
            PasswordEncoder passwords,
            FindByIndexNameSessionRepository<?> sessions,
            FormKeys forms) {
        this.forms = forms;
        this.accounts = accounts;
        this.shops = shops;
        this.user = user;
        this.audit = audit;
        this.passwords = passwords;
        this.sessions = sessions;
    }

    @Override
    @Transactional(readOnly = true)
    public UserDetails loadUserByUsername(String login) {
        return accounts.findByLogin(Account.plainLogin(login))
                .map(SignedIn::new)
                .orElseThrow(() -> new UsernameNotFoundException("no such account"));
    }

    /** A hash of before, made anew as hashes are made now, while its owner signs in. */
    @Override
    @Transactional
    public UserDetails updatePassword(UserDetails who, String hash) {
        Account account = accounts.findByLogin(who.getUsername()).orElseThrow();
        account.renewHash(hash);
        audit.recordByProgram(account.shopId(), "account.hash-renewed", "account", account.id(), "");
        return new SignedIn(account);
    }

    /** Words that whoever guesses the password of whoever has signed in tries first. */
    @Transactional(readOnly = true)
    public List<String> wordsAround() {
        Account account = find(user.accountId());
        return List.of(account.login(), account.name(), shops.current().name());
    }

    /** Whether whoever has signed in came with a password that opens once. */
    @Transactional(readOnly = true)
    public boolean mustChangePassword() {
        return find(user.accountId()).passwordOnce();
    }

    /** Whoever has signed in, as the account is now. */
    @Transactional(readOnly = true)
    public Authentication signedInAnew() {
        SignedIn now = new SignedIn(find(user.accountId()));
        now.eraseCredentials();
        return UsernamePasswordAuthenticationToken.authenticated(now, null, now.getAuthorities());
    }

    /** The language that the account of whoever has signed in asks for: its own, else the shop's. */
    @Transactional(readOnly = true)
    public Optional<String> language() {
        return accounts.findByIdAndShopId(user.accountId(), user.shopId())
                .map(a -> a.language().orElseGet(() -> shops.current().language()));
    }

    /** Remembers the language that whoever has signed in reads pages in. */
    @Transactional
    public void choose(String language) {
        accounts.choose(user.accountId(), language);
    }

    /** For whoever founds a shop: until the end of the transaction nobody else does. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void foundOneAtATime() {
        accounts.foundOneAtATime();
    }

    /** False only before the very first account. */
    @Transactional(readOnly = true)
    public boolean any() {
        return accounts.count() > 0;
    }

    /** Founds the shop and its owner's account; possible once. */
    @Transactional
    public void createFirstOwner(
            String shopName, String timeZone, String login, String name, String password, Set<Role> alsoHolds) {
        accounts.foundOneAtATime();
        if (accounts.count() > 0) {
            throw new ConflictException("account.first-owner.exists");
        }
        long shop = shops.found(shopName.strip(), timeZone, false);
        var roles = EnumSet.of(Role.OWNER);
        roles.addAll(alsoHolds);
        Account owner = accounts.save(new Account(shop, login, name, passwords.encode(password), roles));
        audit.recordByProgram(shop, "account.first-owner", "account", owner.id(), "");
    }

    /** For the demo shop. */
    @Transactional
    public long createIn(long shop, String login, String name, String password, Set<Role> roles) {
        Account added = accounts.save(new Account(shop, login, name, passwords.encode(password), roles));
        audit.recordByProgram(shop, "account.added", "account", added.id(), roles.toString());
        return added.id();
    }

    /**
     * Adds an account with a password that is made up and opens once.
     *
     * @return the password; empty text when the form has been sent before; nothing when the login is taken
     */
    @Transactional
    public Optional<String> add(String login, String name, Set<Role> roles, UUID key) {
        String said = login + " " + name + " " + new TreeSet<>(roles);
        String[] password = {""};
        var sent = forms.once(user.shopId(), key, "account", said, () -> taken(login), () -> {
            password[0] = OneTimePassword.next();
            return add(login, name, password[0], roles);
        });
        return sent.id().map(id -> password[0]);
    }

    private Optional<String> taken(String login) {
        return Optional.of(Account.plainLogin(login)).filter(accounts::existsByLogin);
    }

    private long add(String login, String name, String password, Set<Role> roles) {
        String hash = passwords.encode(password);
        Account fresh = new Account(user.shopId(), login, name, hash, roles);
        fresh.takeOneTimePassword(hash, Instant.now());
        Account added = accounts.save(fresh);
        audit.record("account.added", "account", added.id(), roles.toString());
        return added.id();
    }

    @Transactional
    public void setRoles(long id, Set<Role> roles) {
        Account account = find(id);
        if (!roles.contains(Role.OWNER)) {
            keepAnOwner(account);
        }
        account.holdsExactly(roles);
        audit.record("account.roles", "account", id, roles.toString());
        signOut(account);
    }

    @Transactional
    public void switchTo(long id, boolean on) {
        Account account = find(id);
        if (!on) {
            keepAnOwner(account);
        }
        account.switchTo(on);
        audit.record(on ? "account.switched-on" : "account.switched-off", "account", id, "");
        signOut(account);
    }

    /** Gives an account a password that is made up and opens once; returns it. */
    @Transactional
    public String resetPassword(long id) {
        Account account = find(id);
        String password = OneTimePassword.next();
        account.takeOneTimePassword(passwords.encode(password), Instant.now());
        audit.record("account.password", "account", id, "");
        signOut(account);
        return password;
    }

    /** False when the old password is not right. The person's other sessions end. */
    @Transactional
    public boolean changeOwnPassword(String old, String password, String sessionToKeep) {
        Account account = find(user.accountId());
        if (!passwords.matches(old, account.passwordHash())) {
            return false;
        }
        account.changePassword(passwords.encode(password));
        audit.record("account.own-password", "account", account.id(), "");
        sessions.findByPrincipalName(account.login()).keySet().stream()
                .filter(s -> !s.equals(sessionToKeep))
                .forEach(sessions::deleteById);
        return true;
    }

    @EventListener
    @Transactional
    public void remember(InteractiveAuthenticationSuccessEvent signIn) {
        if (signIn.getAuthentication().getPrincipal() instanceof SignedIn person) {
            accounts.signedIn(person.accountId(), Instant.now());
            accounts.spend(person.accountId(), Instant.now());
        }
    }

    @Transactional(readOnly = true)
    public String login(long id) {
        return find(id).login();
    }

    @Transactional(readOnly = true)
    public List<Line> list() {
        return accounts.findByShopIdOrderByName(user.shopId()).stream()
                .map(a -> new Line(
                        a.id(),
                        a.login(),
                        a.name(),
                        a.roles(),
                        a.active(),
                        a.lastSignInAt().orElse(null)))
                .toList();
    }

    /** Names to show beside revisions, checks and reports: account id to name. */
    @Transactional(readOnly = true)
    public Map<Long, String> names() {
        return accounts.findByShopIdOrderByName(user.shopId()).stream()
                .collect(Collectors.toMap(Account::id, Account::name));
    }

    private Account find(long id) {
        return accounts.findByIdAndShopId(id, user.shopId()).orElseThrow(() -> new NotFoundException("account", id));
    }

    /** Holds the shop's row so that two owners cannot switch each other off at the same moment. */
    private void keepAnOwner(Account without) {
        shops.oneAtATime(user.shopId());
        boolean another = accounts.findByShopIdOrderByName(user.shopId()).stream()
                .anyMatch(a -> a.active() && a.roles().contains(Role.OWNER) && !a.id().equals(without.id()));
        if (!another) {
            throw new ConflictException("account.last-owner");
        }
    }

    /** A change takes hold at once: the person signs in again. */
    private void signOut(Account account) {
        sessions.findByPrincipalName(account.login()).keySet().forEach(sessions::deleteById);
    }
}
