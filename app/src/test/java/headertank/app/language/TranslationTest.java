package headertank.app.language;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.app.MessageSources;
import headertank.calc.Rater;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.carspec.FieldGroup;
import headertank.calc.duty.Duty;
import headertank.calc.duty.ScheduleCsv;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.core.io.ClassPathResource;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.EncodedResource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;
import org.springframework.core.io.support.PropertiesLoaderUtils;

/** Each text exists in each language and takes the same figures. */
class TranslationTest {

    /** Most words of a part of a key. */
    private static final int MOST_WORDS = 4;

    private static final Pattern PLACE = Pattern.compile("\\{(\\d)");

    static Collection<String> files() throws IOException {
        var names = new TreeSet<String>();
        for (Resource file :
                new PathMatchingResourcePatternResolver().getResources("classpath:/messages/*.properties")) {
            if (!file.getFilename().contains("_")) {
                names.add(file.getFilename().replace(".properties", ""));
            }
        }
        return names;
    }

    @ParameterizedTest
    @MethodSource("files")
    void eachTextIsTranslated(String file) throws IOException {
        Properties english = read(file + ".properties");
        Properties german = read(file + "_de.properties");
        assertThat(english).isNotEmpty();
        var missing = new TreeSet<>(english.stringPropertyNames());
        missing.removeAll(german.stringPropertyNames());
        assertThat(missing).isEmpty();
        for (String key : english.stringPropertyNames()) {
            assertThat(places(german.getProperty(key))).as(key).isEqualTo(places(english.getProperty(key)));
            assertThat(german.getProperty(key)).as(key).isNotBlank();
        }
        var left = new TreeSet<>(german.stringPropertyNames());
        left.removeAll(english.stringPropertyNames());
        // the name of a class of core is its author's
        left.removeIf(key -> key.startsWith("option." + BuildField.CORE_CLASS.key() + "."));
        assertThat(left).isEmpty();
    }

    @Test
    void eachFieldOptionAndDutyHasANameInEachLanguage() throws IOException {
        var messages = MessageSources.all();
        var missing = new TreeSet<String>();
        var keys = new TreeSet<String>();
        for (BuildField f : BuildField.values()) {
            keys.add("field." + f.key());
            f.options().forEach(o -> keys.add("option." + f.key() + "." + o));
        }
        for (FieldGroup g : FieldGroup.values()) {
            keys.add("group." + g.name());
        }
        for (CarClass c : CarClass.values()) {
            keys.add("carClass." + c.name());
        }
        for (Duty duty : installedDuties()) {
            keys.add("model.duty." + duty.id());
            keys.add("model.duty-basis." + duty.id());
            duty.points().forEach(p -> keys.add("model.duty." + duty.id() + "." + p.id()));
        }
        for (Locale locale : List.of(Locale.ENGLISH, Locale.GERMAN)) {
            for (String key : keys) {
                String name = messages.getMessage(key, null, null, locale);
                if (name == null || name.isBlank()) {
                    missing.add(locale + " " + key);
                }
            }
        }
        Rater.standard().coreClasses().keySet().forEach(c -> {
            String key = "option." + BuildField.CORE_CLASS.key() + "." + c;
            if (messages.getMessage(key, null, null, Locale.GERMAN) == null) {
                missing.add(key);
            }
        });
        assertThat(missing).isEmpty();
    }

    private static List<Duty> installedDuties() throws IOException {
        List<Duty> duties = new ArrayList<>(Rater.standard().duties().values());
        for (Resource file : new PathMatchingResourcePatternResolver().getResources("classpath:/duties/*.csv")) {
            duties.add(ScheduleCsv.parse(file.getContentAsString(StandardCharsets.UTF_8)));
        }
        assertThat(duties).hasSize(6);
        return duties;
    }

    /** A key names what a text is for; one that repeats its words changes whenever they do. */
    @Test
    void noTextIsKeyedByItsWording() throws IOException {
        var wordy = new TreeSet<String>();
        for (String file : files()) {
            read(file + ".properties").stringPropertyNames().stream()
                    .filter(TranslationTest::isWordy)
                    .forEach(k -> wordy.add(file + ": " + k));
        }
        assertThat(wordy).isEmpty();
        assertThat(isWordy("model.rule.no-shroud.title")).isFalse();
        assertThat(isWordy("calc.oil-wants-to-run-at-about-100-c")).isTrue();
        assertThat(isWordy("calc.the-pump-s-inlet")).isTrue();
        assertThat(isWordy("model.rule.title-2")).isTrue();
    }

    /** More words than name a thing, the rest of an apostrophe, or a number that tells two alike apart. */
    private static boolean isWordy(String key) {
        return Arrays.stream(key.split("\\.")).anyMatch(part -> {
            List<String> words = List.of(part.split("-"));
            return words.size() > MOST_WORDS || words.indexOf("s") > 0 || part.matches(".*-\\d+");
        });
    }

    @Test
    void noApostropheSwallowsAFigure() throws IOException {
        var faulty = new TreeSet<String>();
        for (String file : files()) {
            for (String suffix : List.of("", "_de")) {
                Properties texts = read(file + suffix + ".properties");
                texts.stringPropertyNames().stream()
                        .filter(k -> texts.getProperty(k).replace("''", "").contains("'"))
                        .forEach(k -> faulty.add(file + suffix + ": " + k));
            }
        }
        assertThat(faulty).isEmpty();
    }

    private static Properties read(String name) throws IOException {
        return PropertiesLoaderUtils.loadProperties(
                new EncodedResource(new ClassPathResource("messages/" + name), StandardCharsets.UTF_8));
    }

    private static Collection<String> places(String text) {
        return PLACE.matcher(text).results().map(m -> m.group(1)).collect(Collectors.toCollection(TreeSet::new));
    }
}
