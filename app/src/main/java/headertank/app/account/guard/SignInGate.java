package headertank.app.account.guard;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Arrays;
import java.util.Locale;
import java.util.regex.Pattern;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseCookie;
import org.springframework.security.web.authentication.AuthenticationFailureHandler;
import org.springframework.security.web.authentication.session.SessionAuthenticationException;
import org.springframework.web.filter.OncePerRequestFilter;

/** Stands before the filter that looks at passwords, and lets nobody through who has to wait. */
public final class SignInGate extends OncePerRequestFilter {

    private static final String TRY = SignInGate.class.getName();
    private static final String DEVICE = "headertank-device";
    private static final Pattern TOKEN = Pattern.compile("[0-9a-f]{48}");
    private static final long REMEMBERED_S = 180L * 24 * 3600;
    private static final int LONGEST_LOGIN = 100;

    private final SignInBrake brake;
    private final AuthenticationFailureHandler notSignedIn;

    public SignInGate(SignInBrake brake, AuthenticationFailureHandler notSignedIn) {
        this.brake = brake;
        this.notSignedIn = notSignedIn;
    }

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        return !request.getMethod().equals("POST")
                || !request.getRequestURI().equals(request.getContextPath() + "/login");
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        String typed = request.getParameter("username");
        String login = typed == null ? "" : typed.strip().toLowerCase(Locale.ROOT);
        SignInBrake.Try one = new SignInBrake.Try(
                login.length() > LONGEST_LOGIN ? login.substring(0, LONGEST_LOGIN) : login,
                SignInBrake.place(request.getRemoteAddr()),
                device(request));
        int wait = brake.begin(one);
        if (wait > 0) {
            response.setHeader(HttpHeaders.RETRY_AFTER, Integer.toString(wait));
            notSignedIn.onAuthenticationFailure(request, response, new SessionAuthenticationException("wait"));
            return;
        }
        request.setAttribute(TRY, one);
        chain.doFilter(request, response);
    }

    private static String device(HttpServletRequest request) {
        Cookie[] cookies = request.getCookies();
        return Arrays.stream(cookies == null ? new Cookie[0] : cookies)
                .filter(c -> c.getName().equals(DEVICE)
                        && TOKEN.matcher(c.getValue()).matches())
                .map(Cookie::getValue)
                .findFirst()
                .orElse("");
    }

    /** To be called when the password was right. */
    public void right(HttpServletRequest request, HttpServletResponse response, long shop, long account) {
        if (request.getAttribute(TRY) instanceof SignInBrake.Try one) {
            String token = brake.right(one, shop, account);
            response.addHeader(
                    HttpHeaders.SET_COOKIE,
                    ResponseCookie.from(DEVICE, token)
                            .path("/")
                            .httpOnly(true)
                            .sameSite("Strict")
                            .secure(request.isSecure())
                            .maxAge(REMEMBERED_S)
                            .build()
                            .toString());
        }
    }

    /** To be called when it was wrong. */
    public void wrong(HttpServletRequest request, String why) {
        if (request.getAttribute(TRY) instanceof SignInBrake.Try one) {
            brake.wrong(one, why);
        }
    }
}
