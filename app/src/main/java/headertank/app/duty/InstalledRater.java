package headertank.app.duty;

import headertank.calc.Rater;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What is installed, the same for every shop. What a shop rates with comes from {@link ShopRater}. */
@Configuration(proxyBeanMethods = false)
class InstalledRater {

    @Bean
    Rater rater(@Value("${headertank.samples}") int samples) {
        return Rater.standard().with(new DutyFiles()).sampling(samples);
    }
}
