package headertank.app.account;

import headertank.app.account.guard.RecordsAway;
import headertank.app.account.guard.StaticFiles;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.filter.OncePerRequestFilter;

/** As long as there is no account at all, every page leads to the form for the owner's account. */
final class FirstOwnerFilter extends OncePerRequestFilter {

    static final String PATH = "/first-owner";

    private final Accounts accounts;

    FirstOwnerFilter(Accounts accounts) {
        this.accounts = accounts;
    }

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        var authentication = SecurityContextHolder.getContext().getAuthentication();
        boolean signedIn = authentication != null && authentication.getPrincipal() instanceof SignedIn;
        return signedIn
                || RecordsAway.isAway(request)
                || request.getRequestURI().equals(request.getContextPath() + PATH)
                || request.getRequestURI().equals(request.getContextPath() + "/language")
                || StaticFiles.ALL.matches(request);
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        if (accounts.any()) {
            chain.doFilter(request, response);
        } else {
            response.sendRedirect(request.getContextPath() + PATH);
        }
    }
}
