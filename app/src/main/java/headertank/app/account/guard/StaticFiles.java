package headertank.app.account.guard;

import java.util.stream.Stream;
import org.springframework.http.HttpMethod;
import org.springframework.security.web.servlet.util.matcher.PathPatternRequestMatcher;
import org.springframework.security.web.util.matcher.OrRequestMatcher;
import org.springframework.security.web.util.matcher.RequestMatcher;

/** Files that are the same for everybody. */
public final class StaticFiles {

    public static final RequestMatcher ALL = new OrRequestMatcher(
            Stream.of("/css/**", "/js/**", "/icon.svg", "/service-worker.js", "/manifest.webmanifest", "/webjars/**")
                    .map(path -> (RequestMatcher)
                            PathPatternRequestMatcher.withDefaults().matcher(HttpMethod.GET, path))
                    .toList());

    private StaticFiles() {}
}
