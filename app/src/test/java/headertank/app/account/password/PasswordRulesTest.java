package headertank.app.account.password;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PasswordRulesTest {

    private static final List<String> AROUND = List.of("nia.new", "Nia Newly-Invented", "Invented Motors");

    @ParameterizedTest
    @ValueSource(
            strings = {
                "correct horse battery staple",
                "Der Kühler tropft im März schon wieder",
                "zmqp-vnhr-tkw2-8dfs",
                "three geese cross my yard",
                "mein 3. Auto war grün!",
                "🚗🚕🚙🚌🚎🏎🚓🚑🚒🚐🛻🚚🚛🚜🛵"
            })
    void whatIsLongAndOnesOwnIsTaken(String password) {
        assertThat(PasswordRules.fault(password, AROUND)).isEmpty();
        assertThat(PasswordRules.fault(password.repeat(2), AROUND)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "correct horse", "12345678901234"})
    void whatIsShorterThanFifteenIsRefused(String password) {
        assertThat(PasswordRules.fault(password, AROUND)).contains("account.password.short");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "passwordpassword",
                "P4ssw0rd12345678",
                "123456789012345",
                "qwertyuiopasdfgh",
                "aaaaaaaaaaaaaaaaaaa",
                "abababababababab",
                "Invented Motors1!",
                "nia.new-nia.new-nia",
                "headertank-2026!!",
                "iloveyou123456789",
                "Willkommen12345678"
            })
    void whatIsGuessedFirstIsRefused(String password) {
        assertThat(PasswordRules.fault(password, AROUND)).contains("account.password.guessable");
    }

    @Test
    void sixtyFourAndMoreSignsOfAnyKindAreTakenAndNoKindIsAskedFor() {
        assertThat(PasswordRules.fault("the quick grey car and its radiator stand in the yard again today, x", AROUND))
                .isEmpty();
        assertThat(PasswordRules.fault("x y ".repeat(20) + "the yard is wet", AROUND))
                .isEmpty();
        assertThat(PasswordRules.fault("ab cd ef".repeat(30), AROUND)).contains("account.password.long");
    }

    @Test
    void howAKeyboardPutsALetterTogetherMakesNoDifference() {
        assertThat(PasswordRules.plain("Ku\u0308hler")).isEqualTo(PasswordRules.plain("K\u00fchler"));
    }
}
