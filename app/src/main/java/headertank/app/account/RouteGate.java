package headertank.app.account;

import headertank.app.shop.Role;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.springframework.http.HttpMethod;
import org.springframework.security.authorization.AuthorizationDecision;
import org.springframework.security.authorization.AuthorizationManager;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.GrantedAuthority;
import org.springframework.security.web.access.intercept.RequestAuthorizationContext;

/** Lets a request through if, and only if, the table of rights has a row that says so. */
final class RouteGate implements AuthorizationManager<RequestAuthorizationContext> {

    @Override
    public AuthorizationDecision authorize(
            Supplier<? extends Authentication> who, RequestAuthorizationContext context) {
        var request = context.getRequest();
        String path = request.getRequestURI().substring(request.getContextPath().length());
        Optional<RouteRights.Row> row = RouteRights.deciding(HttpMethod.valueOf(request.getMethod()), path);
        return new AuthorizationDecision(
                row.map(r -> r.allows(roles(who.get()))).orElse(false));
    }

    private static Set<Role> roles(Authentication authentication) {
        if (authentication == null || !authentication.isAuthenticated()) {
            return Set.of();
        }
        Set<String> held = authentication.getAuthorities().stream()
                .map(GrantedAuthority::getAuthority)
                .collect(Collectors.toSet());
        return Arrays.stream(Role.values())
                .filter(r -> held.contains(r.authority()))
                .collect(Collectors.toSet());
    }
}
