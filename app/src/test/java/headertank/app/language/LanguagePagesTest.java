package headertank.app.language;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Changing the language leads back to the page it was changed on, and never to another host. */
class LanguagePagesTest {

    @ParameterizedTest
    @CsvSource({
        "http://shop.test:8080/cars/3/compare?from=1&to=2, '', /cars/3/compare?from=1&to=2",
        "https://shop.test/tank/cars, /tank, /cars",
        "https://shop.test/tank/, /tank, /"
    })
    void leadsBack(String from, String contextPath, String to) {
        assertThat(LanguagePages.ownPath(from, contextPath)).isEqualTo(to);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "http://shop.test//elsewhere.test",
                "http://shop.test/\\elsewhere.test",
                "javascript:alert(1)",
                "http://shop.test/cars?next=http://elsewhere.test",
                ""
            })
    void neverLeadsAway(String from) {
        assertThat(LanguagePages.ownPath(from, "")).isEqualTo("/");
    }

    @Test
    void withoutReferrerToTheStart() {
        assertThat(LanguagePages.ownPath(null, "/tank")).isEqualTo("/");
    }
}
