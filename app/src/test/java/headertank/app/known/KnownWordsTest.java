package headertank.app.known;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.context.i18n.LocaleContextHolder;

class KnownWordsTest {

    @AfterEach
    void noLanguage() {
        LocaleContextHolder.resetLocaleContext();
    }

    @Test
    void nothingHasNoSign() {
        LocaleContextHolder.setLocale(Locale.ENGLISH);
        assertThat(KnownWords.signed(-0.04)).isEqualTo("0.0");
        assertThat(KnownWords.signed(0.04)).isEqualTo("0.0");
        assertThat(KnownWords.signed(-0.06)).isEqualTo("\u22120.1");
        assertThat(KnownWords.signed(1.23)).isEqualTo("+1.2");
        LocaleContextHolder.setLocale(Locale.GERMAN);
        assertThat(KnownWords.signed(-0.04)).isEqualTo("0,0");
    }
}
