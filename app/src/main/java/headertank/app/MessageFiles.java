package headertank.app;

import java.io.IOException;
import java.util.Arrays;
import java.util.Objects;
import org.springframework.context.MessageSource;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.support.ResourceBundleMessageSource;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;

/** All texts of the pages: one file per feature in {@code messages/}, found by itself. A translation ends in {@code _de}. */
@Configuration(proxyBeanMethods = false)
class MessageFiles {

    @Bean
    MessageSource messageSource() throws IOException {
        String[] basenames = Arrays.stream(
                        new PathMatchingResourcePatternResolver().getResources("classpath*:messages/*.properties"))
                .map(Resource::getFilename)
                .filter(Objects::nonNull)
                .filter(name -> !name.contains("_"))
                .map(name -> "messages/" + name.replace(".properties", ""))
                .distinct()
                .sorted()
                .toArray(String[]::new);
        ResourceBundleMessageSource source = new ResourceBundleMessageSource();
        source.setBasenames(basenames);
        source.setDefaultEncoding("UTF-8");
        source.setFallbackToSystemLocale(false);
        source.setAlwaysUseMessageFormat(true);
        return source;
    }
}
