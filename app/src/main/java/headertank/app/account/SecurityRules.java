package headertank.app.account;

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
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.crypto.factory.PasswordEncoderFactories;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.security.web.AuthenticationEntryPoint;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.access.intercept.AuthorizationFilter;
import org.springframework.security.web.authentication.AuthenticationFailureHandler;
import org.springframework.security.web.authentication.AuthenticationSuccessHandler;
import org.springframework.security.web.authentication.LoginUrlAuthenticationEntryPoint;
import org.springframework.security.web.authentication.SavedRequestAwareAuthenticationSuccessHandler;
import org.springframework.security.web.authentication.SimpleUrlAuthenticationFailureHandler;
import org.springframework.security.web.csrf.CsrfException;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;
import org.springframework.security.web.servlet.util.matcher.PathPatternRequestMatcher;
import org.springframework.security.web.util.matcher.OrRequestMatcher;
import org.springframework.security.web.util.matcher.RequestMatcher;
import org.springframework.session.jdbc.PostgreSqlJdbcIndexedSessionRepositoryCustomizer;

/** Signing in, and the way every request takes before it meets a controller. */
@Configuration(proxyBeanMethods = false)
class SecurityRules {

    private static final String CONTENT_POLICY = "default-src 'self'; script-src 'self'; style-src 'self'; "
            + "img-src 'self' data:; object-src 'none'; base-uri 'self'; form-action 'self'; frame-ancestors 'none'";

    /** Files that are the same for everybody. */
    static final RequestMatcher STATIC_FILES = new OrRequestMatcher(
            PathPatternRequestMatcher.withDefaults().matcher(HttpMethod.GET, "/css/**"),
            PathPatternRequestMatcher.withDefaults().matcher(HttpMethod.GET, "/js/**"),
            PathPatternRequestMatcher.withDefaults().matcher(HttpMethod.GET, "/icon.svg"),
            PathPatternRequestMatcher.withDefaults().matcher(HttpMethod.GET, "/service-worker.js"),
            PathPatternRequestMatcher.withDefaults().matcher(HttpMethod.GET, "/manifest.webmanifest"),
            PathPatternRequestMatcher.withDefaults().matcher(HttpMethod.GET, "/webjars/**"));

    /** Two answers of one session at once may both leave a message in it: the later one is kept, none fails. */
    @Bean
    PostgreSqlJdbcIndexedSessionRepositoryCustomizer sessionAttributesAreReplaced() {
        return new PostgreSqlJdbcIndexedSessionRepositoryCustomizer();
    }

    @Bean
    PasswordEncoder passwordEncoder() {
        return PasswordEncoderFactories.createDelegatingPasswordEncoder();
    }

    @Bean
    SecurityFilterChain routes(HttpSecurity http, Accounts accounts, Problems problems) throws Exception {
        http.authorizeHttpRequests(
                requests -> requests.dispatcherTypeMatchers(DispatcherType.ERROR, DispatcherType.FORWARD)
                        .permitAll()
                        .requestMatchers(STATIC_FILES)
                        .permitAll()
                        .anyRequest()
                        .access(new RouteGate()));
        http.formLogin(
                form -> form.loginPage("/login").successHandler(signedIn()).failureHandler(notSignedIn()));
        http.logout(logout -> logout.logoutSuccessUrl("/login?bye"));
        http.exceptionHandling(problem -> problem.authenticationEntryPoint(wayIn(problems))
                .accessDeniedHandler((request, response, e) -> refuse(request, response, e, problems)));
        http.headers(headers -> headers.contentSecurityPolicy(csp -> csp.policyDirectives(CONTENT_POLICY))
                .referrerPolicy(referrer -> referrer.policy(ReferrerPolicy.SAME_ORIGIN)));
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
    private static AuthenticationSuccessHandler signedIn() {
        var usual = new SavedRequestAwareAuthenticationSuccessHandler();
        return (request, response, who) -> {
            if (KeptForm.travelsIn(request)) {
                request.getRequestDispatcher("/go-on").forward(request, response);
            } else {
                usual.onAuthenticationSuccess(request, response, who);
            }
        };
    }

    private static AuthenticationFailureHandler notSignedIn() {
        var usual = new SimpleUrlAuthenticationFailureHandler("/login?failed");
        return (request, response, e) -> {
            if (KeptForm.travelsIn(request)) {
                request.getRequestDispatcher("/sign-in-again").forward(request, response);
            } else {
                usual.onAuthenticationFailure(request, response, e);
            }
        };
    }

    /** A form whose session has ended, or was renewed meanwhile by signing in elsewhere, is no reason to lose what was typed. */
    private static boolean goesOn(HttpServletRequest request, HttpServletResponse response, AccessDeniedException e)
            throws IOException, ServletException {
        if (e instanceof CsrfException && List.of("/login", "/logout").contains(request.getServletPath())) {
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
