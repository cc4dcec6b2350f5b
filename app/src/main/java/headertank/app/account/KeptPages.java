package headertank.app.account;

import headertank.app.shop.CurrentUser;
import headertank.app.shop.Role;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import org.springframework.http.HttpMethod;
import org.springframework.http.server.PathContainer;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.HandlerInterceptor;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;
import org.springframework.web.util.pattern.PathPattern;
import org.springframework.web.util.pattern.PathPatternParser;

/**
 * Says which pages the browser of a technician may keep for a time without a connection, and for whom: what they work with in the
 * workshop, no lists of customers, no prices. The file {@code service-worker.js} keeps them and takes them away at signing out.
 */
@Component
class KeptPages implements HandlerInterceptor, WebMvcConfigurer {

    static final String HEADER = "Headertank-Keep";

    private static final List<PathPattern> KEPT = List.of(
                    "/",
                    "/jobs",
                    "/jobs/{id}",
                    "/cars/{id}",
                    "/cars/{id}/revisions/{number}",
                    "/cars/{id}/revisions/{number}/check",
                    "/checks/{id}",
                    "/checks/{id}/{page}",
                    "/checks/{id}/handover/{page}",
                    "/handover-photos/{id}",
                    "/handover-photos/{id}/small",
                    "/incidents/{id}",
                    "/glossary")
            .stream()
            .map(PathPatternParser.defaultInstance::parse)
            .toList();

    private final CurrentUser user;

    KeptPages(CurrentUser user) {
        this.user = user;
    }

    @Override
    public void addInterceptors(InterceptorRegistry registry) {
        registry.addInterceptor(this);
    }

    @Override
    public boolean preHandle(HttpServletRequest request, HttpServletResponse response, Object handler) {
        boolean isPage = HttpMethod.GET.matches(request.getMethod()) && request.getHeader("HX-Request") == null;
        String path = request.getRequestURI().substring(request.getContextPath().length());
        PathContainer asked = PathContainer.parsePath(path);
        if (isPage && user.has(Role.TECHNICIAN) && KEPT.stream().anyMatch(p -> p.matches(asked))) {
            response.setHeader(HEADER, Long.toString(user.accountId()));
        }
        return true;
    }
}
