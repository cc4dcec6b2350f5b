package headertank.app.account;

import headertank.app.account.guard.StaticFiles;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.List;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.filter.OncePerRequestFilter;

/** Whoever has come in with a password that was made up replaces it before anything else opens. */
final class ChangePasswordFirst extends OncePerRequestFilter {

    private static final String PAGE = "/account/password";
    private static final List<String> OPEN = List.of(PAGE, "/language");

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        var who = SecurityContextHolder.getContext().getAuthentication();
        boolean must = who != null && who.getPrincipal() instanceof SignedIn person && person.mustChangePassword();
        String path = request.getRequestURI().substring(request.getContextPath().length());
        return !must || OPEN.contains(path) || StaticFiles.ALL.matches(request);
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        response.sendRedirect(request.getContextPath() + PAGE);
    }
}
