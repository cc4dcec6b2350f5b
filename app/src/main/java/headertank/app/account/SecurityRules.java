package headertank.app.account;

import headertank.app.account.guard.SignInBrake;
import headertank.app.account.guard.SignInGate;
import headertank.app.account.guard.StaticFiles;
import headertank.app.account.guard.StrangersTokens;
import headertank.app.account.guard.WayBack;
import headertank.app.problem.Problems;
import io.github.wimdeblauwe.htmx.spring.boot.security.HxRefreshHeaderAuthenticationEntryPoint;
import jakarta.servlet.DispatcherType;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.List;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.http.HttpMethod;
import org.springframework.http.HttpStatus;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.authentication.CredentialsExpiredException;
import org.springframework.security.authentication.DisabledException;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.AuthenticationEntryPoint;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.access.intercept.AuthorizationFilter;
import org.springframework.security.web.authentication.AuthenticationFailureHandler;
import org.springframework.security.web.authentication.AuthenticationSuccessHandler;
import org.springframework.security.web.authentication.LoginUrlAuthenticationEntryPoint;
import org.springframework.security.web.authentication.SavedRequestAwareAuthenticationSuccessHandler;
import org.springframework.security.web.authentication.SimpleUrlAuthenticationFailureHandler;
import org.springframework.security.web.authentication.UsernamePasswordAuthenticationFilter;
import org.springframework.security.web.csrf.CsrfException;
import org.springframework.security.web.header.writers.CrossOriginOpenerPolicyHeaderWriter.CrossOriginOpenerPolicy;
import org.springframework.security.web.header.writers.CrossOriginResourcePolicyHeaderWriter.CrossOriginResourcePolicy;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;
import org.springframework.session.jdbc.PostgreSqlJdbcIndexedSessionRepositoryCustomizer;

/** Signing in, and the way every request takes before it meets a controller. */
@Configuration(proxyBeanMethods = false)
class SecurityRules {

    private static final String CONTENT_POLICY = "default-src 'self'; script-src 'self'; style-src 'self'; "
            + "img-src 'self' data:; object-src 'none'; base-uri 'self'; form-action 'self'; frame-ancestors 'none'";

    private static final String PERMISSIONS =
            "camera=(), display-capture=(), geolocation=(), microphone=(), payment=(), usb=()";

    /** Two answers of one session at once may both leave a message in it: the later one is kept, none fails. */
    @Bean
    PostgreSqlJdbcIndexedSessionRepositoryCustomizer sessionAttributesAreReplaced() {
        return new PostgreSqlJdbcIndexedSessionRepositoryCustomizer();
    }

    @Bean
    SecurityFilterChain routes(HttpSecurity http, Accounts accounts, Problems problems, SignInBrake brake)
            throws Exception {
        var wayBack = new WayBack();
        var gate = new SignInGate(brake, SecurityRules::mustWait);
        http.authorizeHttpRequests(
                requests -> requests.dispatcherTypeMatchers(DispatcherType.ERROR, DispatcherType.FORWARD)
                        .permitAll()
                        .requestMatchers(StaticFiles.ALL)
                        .permitAll()
                        .anyRequest()
                        .access(new RouteGate()));
        http.formLogin(form ->
                form.loginPage("/login").successHandler(signedIn(gate, wayBack)).failureHandler(notSignedIn(gate)));
        http.requestCache(cache -> cache.requestCache(wayBack));
        http.csrf(csrf -> csrf.csrfTokenRepository(new StrangersTokens()));
        http.logout(logout -> logout.logoutSuccessUrl("/login?bye"));
        http.exceptionHandling(problem -> problem.authenticationEntryPoint(wayIn(problems))
                .accessDeniedHandler((request, response, e) -> refuse(request, response, e, problems)));
        http.headers(headers -> headers.contentSecurityPolicy(csp -> csp.policyDirectives(CONTENT_POLICY))
                .referrerPolicy(referrer -> referrer.policy(ReferrerPolicy.SAME_ORIGIN))
                .permissionsPolicyHeader(permissions -> permissions.policy(PERMISSIONS))
                .crossOriginOpenerPolicy(opener -> opener.policy(CrossOriginOpenerPolicy.SAME_ORIGIN))
                .crossOriginResourcePolicy(resource -> resource.policy(CrossOriginResourcePolicy.SAME_ORIGIN)));
        http.addFilterBefore(gate, UsernamePasswordAuthenticationFilter.class);
        http.addFilterAfter(new ChangePasswordFirst(), AuthorizationFilter.class);
        http.addFilterBefore(new FirstOwnerFilter(accounts), AuthorizationFilter.class);
        return http.build();
    }

    /** A program is told, a fragment makes its page reload, and a page leads to the form. */
    private static AuthenticationEntryPoint wayIn(Problems problems) {
        var fragment = new HxRefreshHeaderAuthenticationEntryPoint();
        var page = new LoginUrlAuthenticationEntryPoint("/login");
        return (request, response, e) -> {
            if (KeptForm.isPageForm(request)) {
                request.getRequestDispatcher("/sign-in-again").forward(request, response);
            } else if (Problems.isForProgram(request)) {
                problems.write(request, response, HttpStatus.UNAUTHORIZED, "Sign in first.");
            } else if (request.getHeader("HX-Request") != null) {
                fragment.commence(request, response, e);
            } else {
                page.commence(request, response, e);
            }
        };
    }

    /** Where somebody wanted to go; with a form that was filled in before, to the page that sends it. */
    private static AuthenticationSuccessHandler signedIn(SignInGate gate, WayBack wayBack) {
        var usual = new SavedRequestAwareAuthenticationSuccessHandler();
        usual.setRequestCache(wayBack);
        return (request, response, who) -> {
            SignedIn person = (SignedIn) who.getPrincipal();
            gate.right(request, response, person.shopId(), person.accountId());
            if (KeptForm.travelsIn(request)) {
                request.getRequestDispatcher("/go-on").forward(request, response);
            } else {
                usual.onAuthenticationSuccess(request, response, who);
            }
        };
    }

    private static AuthenticationFailureHandler notSignedIn(SignInGate gate) {
        var usual = new SimpleUrlAuthenticationFailureHandler("/login?failed");
        usual.setAllowSessionCreation(false);
        return (request, response, e) -> {
            gate.wrong(request, reason(e));
            if (KeptForm.travelsIn(request)) {
                request.getRequestDispatcher("/sign-in-again").forward(request, response);
            } else {
                usual.onAuthenticationFailure(request, response, e);
            }
        };
    }

    private static String reason(AuthenticationException e) {
        return e instanceof DisabledException
                ? "switched off"
                : e instanceof CredentialsExpiredException ? "one-time password spent" : "wrong password";
    }

    /** Too many wrong tries: nobody looks at the password. */
    private static void mustWait(HttpServletRequest request, HttpServletResponse response, AuthenticationException e)
            throws IOException, ServletException {
        if (KeptForm.travelsIn(request)) {
            request.getRequestDispatcher("/sign-in-again").forward(request, response);
        } else {
            response.sendRedirect(request.getContextPath() + "/login?wait");
        }
    }

    /** A form whose session has ended, or was renewed meanwhile by signing in elsewhere, is no reason to lose what was typed. */
    private static boolean goesOn(HttpServletRequest request, HttpServletResponse response, AccessDeniedException e)
            throws IOException, ServletException {
        if (e instanceof CsrfException && List.of("/login", "/logout").contains(request.getServletPath())) {
            if (KeptForm.travelsIn(request) && KeptForm.isFromOurPage(request)) {
                request.setAttribute(GoOnPages.NOT_TRIED, true);
                request.getRequestDispatcher("/sign-in-again").forward(request, response);
                return true;
            }
            response.sendRedirect(request.getContextPath() + "/login");
            return true;
        }
        if (!(e instanceof CsrfException) || !KeptForm.isPageForm(request)) {
            return false;
        }
        var who = SecurityContextHolder.getContext().getAuthentication();
        boolean here = who != null && who.getPrincipal() instanceof SignedIn;
        request.getRequestDispatcher(here ? "/go-on" : "/sign-in-again").forward(request, response);
        return true;
    }

    /** A route that does not exist is "not found", not "forbidden". */
    private static void refuse(
            HttpServletRequest request, HttpServletResponse response, AccessDeniedException e, Problems problems)
            throws IOException, ServletException {
        if (goesOn(request, response, e)) {
            return;
        }
        String path = request.getRequestURI().substring(request.getContextPath().length());
        boolean known = RouteRights.deciding(HttpMethod.valueOf(request.getMethod()), path)
                        .isPresent()
                || e instanceof CsrfException;
        HttpStatus status = known ? HttpStatus.FORBIDDEN : HttpStatus.NOT_FOUND;
        if (Problems.isForProgram(request)) {
            problems.write(request, response, status, null);
        } else {
            response.sendError(status.value());
        }
    }
}
