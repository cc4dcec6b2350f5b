package headertank.app.glossary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import headertank.app.account.People;
import headertank.app.account.RouteRights;
import headertank.app.database.DatabaseTest;
import headertank.app.shop.Role;
import headertank.calc.carspec.BuildField;
import headertank.calc.verdict.Verdict;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.MessageSource;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** Each word has its sentence, and whatever leads to one arrives. */
@DatabaseTest
class GlossaryIT {

    private static final Pattern LINK = Pattern.compile("glossary/term :: link\\('([^']+)'");
    private static final Pattern ENTRY = Pattern.compile(
            "<div class=\"panel\" id=\"([^\"]+)\">\\s*<dt>(.*?)</dt>\\s*<dd>(.*?) <span", Pattern.DOTALL);

    @Autowired
    MockMvc mvc;

    @Autowired
    People people;

    @Autowired
    MessageSource messages;

    RequestPostProcessor somebody;

    @BeforeEach
    void somebody() {
        somebody = people.in(people.aShop(), Role.TECHNICIAN);
    }

    private String page(String words, Locale locale) throws Exception {
        return mvc.perform(get("/glossary").param("q", words).with(somebody).locale(locale))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString(StandardCharsets.UTF_8);
    }

    private static TreeSet<String> words(String page) {
        TreeSet<String> words = new TreeSet<>();
        Matcher entry = ENTRY.matcher(page);
        while (entry.find()) {
            assertThat(words.add(entry.group(1)))
                    .as("twice: %s", entry.group(1))
                    .isTrue();
            assertThat(entry.group(3).strip()).as(entry.group(1)).endsWith(".").hasSizeGreaterThan(20);
            assertThat(entry.group(3).strip().replaceAll("[.](?=\\S)", ""))
                    .as("one sentence: %s", entry.group(3))
                    .containsOnlyOnce(".");
        }
        return words;
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void everyFieldAndEveryTermHasOneSentence(String language) throws Exception {
        TreeSet<String> words = words(page("", Locale.forLanguageTag(language)));
        for (BuildField field : BuildField.values()) {
            assertThat(words).contains(field.name());
        }
        assertThat(words).hasSize(BuildField.values().length + Term.values().length);
    }

    @Test
    void everyLinkToATermArrives() throws Exception {
        TreeSet<String> words = words(page("", Locale.ENGLISH));
        assertThat(linked()).isNotEmpty();
        assertThat(words).containsAll(linked());
    }

    private static TreeSet<String> linked() throws IOException {
        TreeSet<String> linked = new TreeSet<>();
        for (Resource template :
                new PathMatchingResourcePatternResolver().getResources("classpath:/templates/**/*.html")) {
            Matcher link = LINK.matcher(template.getContentAsString(StandardCharsets.UTF_8));
            while (link.find()) {
                linked.add(link.group(1));
            }
        }
        return linked;
    }

    /** Every term is explained on a page that uses it, and leads to its place in the glossary. */
    @Test
    void everyTermIsReachedFromAPageThatUsesIt() throws Exception {
        assertThat(RouteRights.rows().stream()
                        .map(r -> r.pattern().getPatternString())
                        .flatMap(p -> PageTerms.of(p).stream()))
                .contains(Term.values());
        String jobs = mvc.perform(get("/jobs").with(somebody).locale(Locale.ENGLISH))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString(StandardCharsets.UTF_8);
        assertThat(PageTerms.of("/jobs")).isNotEmpty().allSatisfy(t -> assertThat(jobs)
                .contains("href=\"/glossary#" + t.word() + "\""));
        assertThat(jobs).contains("What the words here mean", "What a customer asked for");
    }

    /** A word is led to from where it stands: as the pages write it, which for a verdict is larger than in the glossary. */
    @Test
    void verdictsAreKnownAsPagesWriteThem() throws Exception {
        RequestPostProcessor owner = people.in(people.aShop(), Role.OWNER);
        String page = mvc.perform(get("/settings").with(owner))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString(StandardCharsets.UTF_8);
        var terms = Map.of(Verdict.GO, Term.GO, Verdict.GO_WITH_CONDITIONS, Term.CONDITIONS, Verdict.NO_GO, Term.NO_GO);
        assertThat(terms).containsOnlyKeys(Verdict.values()).allSatisfy((verdict, term) -> {
            for (Locale locale : List.of(Locale.ENGLISH, Locale.GERMAN)) {
                String key = "glossary." + term.word();
                String name = messages.getMessage(key, null, locale);
                assertThat(messages.getMessage(key + ".on", null, name, locale))
                        .isEqualTo(messages.getMessage("verdict." + verdict, null, locale));
            }
            assertThat(page)
                    .contains("data-shown=\"" + messages.getMessage("verdict." + verdict, null, Locale.ENGLISH) + "\"");
        });
    }

    @Test
    void aLetterIsForgivenAndSoIsTheOrder() throws Exception {
        for (String asked : List.of("risky choise", "choice rsky", "chioce riskyy")) {
            assertThat(words(page(asked, Locale.ENGLISH))).as(asked).contains("risky-choice");
        }
        assertThat(words(page("rixxy choice", Locale.ENGLISH)))
                .as("two letters")
                .isEmpty();
        assertThat(words(page("atx", Locale.ENGLISH)))
                .as("short words are taken as typed")
                .isEmpty();
    }

    @Test
    void aTermIsFoundByWordsInAnyOrderAndShowsItsUnit() throws Exception {
        for (String asked : List.of("boils day", "day boils", "ATB")) {
            assertThat(words(page(asked, Locale.ENGLISH))).as(asked).contains("atb");
        }
        String flow = page("moves nothing one fan", Locale.ENGLISH);
        assertThat(words(flow)).containsExactly("FAN_FLOW");
        assertThat(flow).contains("m³/h");
        assertThat(page("no such word at all", Locale.ENGLISH)).contains("Nothing found");
    }
}
