package headertank.app.form;

import org.springframework.context.annotation.Configuration;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/** Lets every page that has a form know what is wrong with it. */
@Configuration(proxyBeanMethods = false)
class FormSettings implements WebMvcConfigurer {

    private final FormProblems problems;

    FormSettings(FormProblems problems) {
        this.problems = problems;
    }

    @Override
    public void addInterceptors(InterceptorRegistry registry) {
        registry.addInterceptor(problems);
    }
}
