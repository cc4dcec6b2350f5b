package headertank.app.account.guard;

import headertank.app.database.DatabaseWatch;
import headertank.app.problem.SendAgain;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletRequestWrapper;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * While the database is away: files and the page for signing in open as for a stranger, everything else is answered at once by a
 * page that keeps what was typed. It stands before all that looks for a session, for sessions are kept in the database too.
 */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE + 1)
public class RecordsAway extends OncePerRequestFilter {

    private static final String ATTRIBUTE = RecordsAway.class.getName();
    private static final List<String> OPEN = List.of("/login", "/offline");

    private final DatabaseWatch watch;

    RecordsAway(DatabaseWatch watch) {
        this.watch = watch;
    }

    /** Whether this request is answered without the database. */
    public static boolean isAway(HttpServletRequest request) {
        return request.getAttribute(ATTRIBUTE) != null;
    }

    /** Somebody whom nobody knows: a session would have to be looked for. */
    private static final class Unknown extends HttpServletRequestWrapper {

        Unknown(HttpServletRequest request) {
            super(request);
        }

        @Override
        public Cookie[] getCookies() {
            Cookie[] all = super.getCookies();
            return all == null
                    ? null
                    : Arrays.stream(all)
                            .filter(c -> !SessionCookies.NAMES.contains(c.getName()))
                            .toArray(Cookie[]::new);
        }

        @Override
        public HttpSession getSession(boolean create) {
            return null;
        }

        @Override
        public HttpSession getSession() {
            return null;
        }
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        if (watch.isAway()) {
            without(request, response, chain);
            return;
        }
        try {
            chain.doFilter(request, response);
        } catch (ServletException | IOException | RuntimeException e) {
            if (!DatabaseWatch.isTold(e)) {
                throw e;
            }
            watch.failed();
            if (response.isCommitted()) {
                throw e;
            }
            response.resetBuffer();
            say(request, response);
        }
    }

    private static void without(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        String path = request.getRequestURI().substring(request.getContextPath().length());
        if (StaticFiles.ALL.matches(request) || request.getMethod().equals("GET") && OPEN.contains(path)) {
            request.setAttribute(ATTRIBUTE, true);
            chain.doFilter(new Unknown(request), response);
        } else {
            say(request, response);
        }
    }

    private static void say(HttpServletRequest request, HttpServletResponse response)
            throws ServletException, IOException {
        request.setAttribute(ATTRIBUTE, true);
        SendAgain.after(request, response);
        request.getRequestDispatcher("/error").forward(new Unknown(request), response);
    }
}
