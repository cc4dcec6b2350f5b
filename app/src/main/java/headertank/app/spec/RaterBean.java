package headertank.app.spec;

import headertank.calc.Rater;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** One rater for the whole service: it is immutable. */
@Configuration(proxyBeanMethods = false)
class RaterBean {

    @Bean
    Rater rater() {
        return Rater.standard();
    }
}
