package headertank.app.language;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import headertank.app.MessageSources;
import headertank.app.unit.UnitSystem;
import headertank.calc.quantity.Message;
import headertank.calc.quantity.MessageCode;
import headertank.calc.quantity.SiFigure;
import headertank.calc.verdict.VerdictText;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.context.MessageSource;

/** Every code of calc-core has its words, and figures stand in them in the reader's units. */
class ModelWordsTest {

    private static final Pattern PLACE = Pattern.compile("<(\\d+)>");

    private final MessageSource messages = MessageSources.all();
    private final ModelWords words = MessageSources.modelWords();

    /** All constants of all enumerations of codes, wherever in calc-core they are. */
    private static List<MessageCode> codes() {
        List<MessageCode> codes = new ArrayList<>();
        for (JavaClass type : new ClassFileImporter()
                .withImportOption(new ImportOption.DoNotIncludeTests())
                .importPackages("headertank.calc")) {
            if (type.isEnum() && type.isAssignableTo(MessageCode.class)) {
                for (Object constant : type.reflect().getEnumConstants()) {
                    codes.add((MessageCode) constant);
                }
            }
        }
        return codes;
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void everyCodeHasWordsWithAPlaceForEachArgument(String language) {
        List<String> wrong = new ArrayList<>();
        List<MessageCode> codes = codes();
        assertThat(codes).hasSizeGreaterThan(300);
        for (MessageCode code : codes) {
            Object[] places = new Object[code.arguments() + 5];
            for (int i = 0; i < places.length; i++) {
                places[i] = "<" + i + ">";
            }
            String sentence =
                    messages.getMessage(ModelWords.PREFIX + code.code(), places, null, Locale.forLanguageTag(language));
            if (sentence == null || sentence.isBlank() || places(sentence) != code.arguments()) {
                wrong.add(code.code() + ": " + sentence);
            }
        }
        assertThat(wrong).isEmpty();
    }

    private static int places(String sentence) {
        TreeSet<Integer> found = new TreeSet<>();
        PLACE.matcher(sentence).results().forEach(m -> found.add(Integer.valueOf(m.group(1))));
        return found.isEmpty() ? 0 : found.last() + 1 == found.size() ? found.size() : -1;
    }

    @Test
    void noTwoCodesAreTheSame() {
        assertThat(codes()).extracting(MessageCode::code).doesNotHaveDuplicates();
    }

    @Test
    void figuresStandInTheReadersUnits() {
        Message hot = VerdictText.OIL_ABOVE_LIMIT.with(SiFigure.difference(3.4));
        assertThat(words.of(hot, UnitSystem.METRIC, Locale.ENGLISH))
                .isEqualTo("Oil is 3.4\u00a0K above its caution limit.");
        assertThat(words.of(hot, UnitSystem.METRIC, Locale.GERMAN)).contains("3,4\u00a0K über");
        assertThat(words.of(hot, UnitSystem.US, Locale.ENGLISH)).contains("6\u00a0°F above");
    }

    @Test
    void whatNoModelStandsForIsABoundOrAWord() {
        FigureWords metric = new FigureWords(messages, UnitSystem.METRIC, Locale.ENGLISH);
        assertThat(metric.of(SiFigure.temperature(533.15))).isEqualTo("above 160.0\u00a0°C");
        assertThat(new FigureWords(messages, UnitSystem.US, Locale.ENGLISH).of(SiFigure.temperature(533.15)))
                .isEqualTo("above 320\u00a0°F");
        assertThat(metric.of(SiFigure.difference(Double.NEGATIVE_INFINITY))).isEqualTo("below −100.0\u00a0K");
        assertThat(metric.of(SiFigure.temperature(Double.NaN))).isEqualTo("–");
    }

    @Test
    void aPlugInsPlainTextIsShownAsItIs() {
        assertThat(words.of(Message.plain("A rule of the house."), UnitSystem.US, Locale.GERMAN))
                .isEqualTo("A rule of the house.");
        assertThat(words.of(Message.of("house-rule.title", SiFigure.power(1000)), UnitSystem.METRIC, Locale.GERMAN))
                .startsWith("house-rule.title");
    }
}
