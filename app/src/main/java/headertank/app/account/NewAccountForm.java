package headertank.app.account;

import headertank.app.shop.Role;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.util.Set;

/** What the owner types to add an account. */
record NewAccountForm(
        @NotBlank(message = "{account.name.missing}") @Size(max = 100, message = "{account.name.long}")
        String name,

        @Pattern(regexp = NewAccountForm.LOGIN, message = "{account.login.form}")
        String login,

        @NotEmpty(message = "{account.roles.missing}") Set<Role> roles) {

    static final String LOGIN = "\\s*[A-Za-z0-9][A-Za-z0-9._@-]{1,59}\\s*";

    static NewAccountForm empty() {
        return new NewAccountForm("", "", Set.of());
    }
}
