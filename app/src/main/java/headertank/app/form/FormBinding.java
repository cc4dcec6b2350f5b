package headertank.app.form;

import java.util.List;
import java.util.Objects;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.boot.webmvc.autoconfigure.WebMvcRegistrations;
import org.springframework.context.annotation.Primary;
import org.springframework.stereotype.Component;
import org.springframework.web.bind.ServletRequestDataBinder;
import org.springframework.web.context.request.NativeWebRequest;
import org.springframework.web.method.annotation.InitBinderDataBinderFactory;
import org.springframework.web.method.support.InvocableHandlerMethod;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerAdapter;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import org.springframework.web.servlet.mvc.method.annotation.ServletRequestDataBinderFactory;

/** Lets every form be made by {@link FormBinder}; what other libraries register stays. */
@Component
@Primary
class FormBinding implements WebMvcRegistrations {

    private final ObjectProvider<WebMvcRegistrations> all;

    FormBinding(ObjectProvider<WebMvcRegistrations> all) {
        this.all = all;
    }

    @Override
    public RequestMappingHandlerMapping getRequestMappingHandlerMapping() {
        return all.stream()
                .filter(r -> r != this)
                .map(WebMvcRegistrations::getRequestMappingHandlerMapping)
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(null);
    }

    @Override
    public RequestMappingHandlerAdapter getRequestMappingHandlerAdapter() {
        return new RequestMappingHandlerAdapter() {
            @Override
            protected InitBinderDataBinderFactory createDataBinderFactory(List<InvocableHandlerMethod> methods) {
                return new ServletRequestDataBinderFactory(methods, getWebBindingInitializer()) {
                    @Override
                    protected ServletRequestDataBinder createBinderInstance(
                            Object target, String name, NativeWebRequest request) {
                        return new FormBinder(target, name);
                    }
                };
            }
        };
    }
}
