package headertank.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Locale;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;
import org.springframework.core.io.support.PropertiesLoaderUtils;

/** Every text that a template names exists. */
class MessagesTest {

    private static final Pattern KEY = Pattern.compile("#\\{([a-zA-Z][\\w.-]*)");

    @Test
    void templatesNameOnlyTextsThatExist() throws IOException {
        var messages = new MessageFiles().messageSource();
        var missing = new TreeSet<String>();
        for (Resource template :
                new PathMatchingResourcePatternResolver().getResources("classpath:/templates/**/*.html")) {
            Matcher key = KEY.matcher(template.getContentAsString(StandardCharsets.UTF_8));
            while (key.find()) {
                if (messages.getMessage(key.group(1), null, null, Locale.ENGLISH) == null) {
                    missing.add(template.getFilename() + ": " + key.group(1));
                }
            }
        }
        assertThat(missing).isEmpty();
    }

    @Test
    void noTextIsWrittenTwice() throws IOException {
        var owner = new HashMap<Object, String>();
        var twice = new TreeSet<String>();
        for (Resource file :
                new PathMatchingResourcePatternResolver().getResources("classpath:/messages/*.properties")) {
            if (file.getFilename().contains("_")) {
                continue;
            }
            for (Object key : PropertiesLoaderUtils.loadProperties(file).keySet()) {
                String other = owner.put(key, file.getFilename());
                if (other != null) {
                    twice.add(key + ": " + other + ", " + file.getFilename());
                }
            }
        }
        assertThat(owner).isNotEmpty();
        assertThat(twice).isEmpty();
    }

    @Test
    void templatesHoldNoScriptAndNoStyleOfTheirOwn() throws IOException {
        for (Resource template :
                new PathMatchingResourcePatternResolver().getResources("classpath:/templates/**/*.html")) {
            assertThat(template.getContentAsString(StandardCharsets.UTF_8))
                    .as(template.getFilename())
                    .doesNotContain("style=\"", "<style", "<script>", "onclick", "hx-on", "javascript:");
        }
    }
}
