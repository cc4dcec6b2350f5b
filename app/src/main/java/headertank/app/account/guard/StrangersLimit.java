package headertank.app.account.guard;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.session.web.http.SessionRepositoryFilter;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Keeps threads for those who have signed in: whoever has no session shares a part of them, one place a smaller part. It stands
 * before anything reads a body, for a slow one would hold its thread there.
 */
@Component
@Order(SessionRepositoryFilter.DEFAULT_ORDER + 10)
class StrangersLimit extends OncePerRequestFilter {

    private final Strangers strangers = new Strangers();

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        if (request.getSession(false) != null) {
            chain.doFilter(request, response);
            return;
        }
        String place = SignInBrake.place(request.getRemoteAddr());
        if (!strangers.enter(place)) {
            request.setAttribute(UnreadBodies.UNREAD, true);
            response.setStatus(HttpStatus.SERVICE_UNAVAILABLE.value());
            response.setHeader(HttpHeaders.RETRY_AFTER, "5");
            response.setHeader(HttpHeaders.CONNECTION, "close");
            response.setContentType("text/plain");
            response.getOutputStream()
                    .write("Too many requests at once from here. Try again in a moment."
                            .getBytes(StandardCharsets.UTF_8));
            return;
        }
        try {
            chain.doFilter(request, response);
        } finally {
            strangers.leave(place);
        }
    }
}
