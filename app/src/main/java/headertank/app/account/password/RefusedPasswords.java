package headertank.app.account.password;

/** Passwords that open nothing here, whatever is stored: those that everybody can read. */
@FunctionalInterface
public interface RefusedPasswords {
    boolean refuses(String password);
}
