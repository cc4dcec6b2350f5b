package headertank.app.unit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.context.i18n.LocaleContextHolder;

/** What one person typed reads the same for a colleague with another sign before the decimals. */
class DecimalSignTest {

    @AfterEach
    void forget() {
        LocaleContextHolder.resetLocaleContext();
    }

    @Test
    void aCommaOfAGermanIsAPointForAnEnglishReader() {
        LocaleContextHolder.setLocale(Locale.ENGLISH);
        assertThat(DecimalSign.inTyped("1,270 mm")).isEqualTo("1.270 mm");
        assertThat(Units.parse(DecimalSign.inTyped("1,270 mm"), Dimension.LENGTH, UnitSystem.METRIC))
                .isEqualTo(0.00127);
    }

    @Test
    void aPointIsACommaForAGermanReader() {
        LocaleContextHolder.setLocale(Locale.GERMAN);
        assertThat(DecimalSign.inTyped("1.3 bar")).isEqualTo("1,3 bar");
        assertThat(DecimalSign.inFile("1,3 bar")).isEqualTo("1.3 bar");
        assertThat(DecimalSign.inTyped("2500 cfm")).isEqualTo("2500 cfm");
        assertThat(Units.number(383.15, Dimension.TEMPERATURE, UnitSystem.METRIC))
                .isEqualTo("110,0");
        assertThat(Units.value(383.15, Dimension.TEMPERATURE, UnitSystem.METRIC))
                .isEqualTo(110);
    }

    @Test
    void theShopsUnitIsKnownHoweverItIsSpelt() {
        assertThat(Units.isInShopUnit("85 C", Dimension.TEMPERATURE, UnitSystem.METRIC))
                .isTrue();
        assertThat(Units.isInShopUnit("-5 °C", Dimension.TEMPERATURE, UnitSystem.METRIC))
                .isTrue();
        assertThat(Units.isInShopUnit("85 F", Dimension.TEMPERATURE, UnitSystem.METRIC))
                .isFalse();
    }
}
