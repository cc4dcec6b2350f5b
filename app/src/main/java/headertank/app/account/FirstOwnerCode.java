package headertank.app.account;

import headertank.app.account.password.OneTimePassword;
import headertank.app.database.StartLines;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Locale;
import java.util.Map;
import org.springframework.stereotype.Component;

/**
 * What tells whoever has started the program from whoever happens to open its first page: a code that is printed at the start as
 * long as there is no account, and asked for with the first one. Each start has its own.
 */
@Component
class FirstOwnerCode implements StartLines {

    private final Accounts accounts;
    private final String code = OneTimePassword.next();

    FirstOwnerCode(Accounts accounts) {
        this.accounts = accounts;
    }

    boolean fits(String typed) {
        return MessageDigest.isEqual(plain(typed), plain(code));
    }

    private static byte[] plain(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[\\s-]", "").getBytes(StandardCharsets.UTF_8);
    }

    @Override
    public Map<String, String> lines() {
        return accounts.any() ? Map.of() : Map.of("owner's code", code + "  (the first page asks for it, once)");
    }
}
