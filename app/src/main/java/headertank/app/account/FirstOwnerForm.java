package headertank.app.account;

import headertank.app.account.password.AcceptablePassword;
import headertank.app.shop.Role;
import headertank.app.shop.TimeZones;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What the first person types who opens a new installation.
 *
 * @param code that the program has printed at its start
 */
record FirstOwnerForm(
        String code,

        @NotBlank(message = "{account.shop.missing}") @Size(max = 100, message = "{account.name.long}")
        String shop,

        String timeZone,

        @NotBlank(message = "{account.name.missing}") @Size(max = 100, message = "{account.name.long}")
        String name,

        @Pattern(regexp = NewAccountForm.LOGIN, message = "{account.login.form}")
        String login,

        @AcceptablePassword String password,
        Set<Role> alsoHolds) {

    FirstOwnerForm {
        code = code == null ? "" : code.strip();
        timeZone = timeZone == null || timeZone.isBlank() ? TimeZones.USUAL : timeZone.strip();
        alsoHolds = alsoHolds == null ? Set.of() : Set.copyOf(alsoHolds);
    }

    /** What whoever guesses the password tries first. */
    List<String> words() {
        return Stream.of(shop, name, login).filter(Objects::nonNull).toList();
    }

    static FirstOwnerForm empty() {
        return new FirstOwnerForm("", "", TimeZones.USUAL, "", "", "", Set.of(Role.FRONT_DESK, Role.TECHNICIAN));
    }
}
