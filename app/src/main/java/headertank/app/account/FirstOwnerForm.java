package headertank.app.account;

import headertank.app.shop.Role;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.util.Set;

/** What the first person types who opens a new installation. */
record FirstOwnerForm(
        @NotBlank(message = "{account.shop.missing}") @Size(max = 100, message = "{account.name.long}")
        String shop,

        @NotBlank(message = "{account.name.missing}") @Size(max = 100, message = "{account.name.long}")
        String name,

        @Pattern(regexp = NewAccountForm.LOGIN, message = "{account.login.form}")
        String login,

        @AcceptablePassword String password,
        Set<Role> alsoHolds) {

    FirstOwnerForm {
        alsoHolds = alsoHolds == null ? Set.of() : Set.copyOf(alsoHolds);
    }

    static FirstOwnerForm empty() {
        return new FirstOwnerForm("", "", "", "", Set.of(Role.FRONT_DESK, Role.TECHNICIAN));
    }
}
