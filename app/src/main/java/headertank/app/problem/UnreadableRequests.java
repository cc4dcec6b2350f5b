package headertank.app.problem;

import jakarta.servlet.FilterChain;
import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletRequestWrapper;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Collections;
import java.util.Enumeration;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpStatus;
import org.springframework.session.web.http.SessionRepositoryFilter;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * The one place that refuses a request that cannot be read at all, before anything else looks at it: parameters or parts that the
 * server cannot take apart, names that no form of ours has, and signs that no field holds and the database cannot keep.
 */
@Component
@Order(SessionRepositoryFilter.DEFAULT_ORDER + 20)
class UnreadableRequests extends OncePerRequestFilter {

    /** Longest value of one field [characters]; larger things come as files. Modelling choice: the server's own limit is 2 MiB. */
    private static final int LONGEST_VALUE = 2_000_000;

    private static final Pattern NAME = Pattern.compile("[A-Za-z0-9_.:-]{1,120}(\\[[A-Za-z0-9_.-]{1,60}])?");

    /** What the page of a refused request is made from: asking for its parameters once more would fail once more. */
    private static final class WithoutContent extends HttpServletRequestWrapper {
        WithoutContent(HttpServletRequest request) {
            super(request);
        }

        @Override
        public String getMethod() {
            return "GET";
        }

        @Override
        public String getContentType() {
            return null;
        }

        @Override
        public String getParameter(String name) {
            return null;
        }

        @Override
        public Map<String, String[]> getParameterMap() {
            return Map.of();
        }

        @Override
        public Enumeration<String> getParameterNames() {
            return Collections.emptyEnumeration();
        }

        @Override
        public String[] getParameterValues(String name) {
            return null;
        }
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        Optional<Refusal> refusal;
        try {
            refusal = address(request).or(() -> headers(request)).or(() -> parameters(request.getParameterMap()));
        } catch (RuntimeException e) {
            refuse(request, response, mentionsSize(e));
            return;
        }
        if (refusal.isPresent()) {
            refusal.get().leaveWith(request);
            response.sendError(HttpStatus.BAD_REQUEST.value());
        } else {
            chain.doFilter(request, response);
        }
    }

    /** The server cannot take the request apart, and would fail once more while it told so: the page is made without it. */
    private static void refuse(HttpServletRequest request, HttpServletResponse response, boolean large)
            throws ServletException, IOException {
        int status = (large ? HttpStatus.CONTENT_TOO_LARGE : HttpStatus.BAD_REQUEST).value();
        Refusal.of("request", request.getContentType(), large ? "refused.allowed.smaller" : "refused.allowed.form")
                .leaveWith(request);
        request.setAttribute(RequestDispatcher.ERROR_STATUS_CODE, status);
        request.setAttribute(RequestDispatcher.ERROR_REQUEST_URI, request.getRequestURI());
        response.setStatus(status);
        request.getRequestDispatcher("/error").forward(new WithoutContent(request), response);
    }

    private static boolean mentionsSize(Throwable e) {
        for (Throwable t = e; t != null; t = t.getCause()) {
            String name = t.getClass().getSimpleName();
            if (name.contains("SizeLimit") || name.contains("FileCountLimit")) {
                return true;
            }
            if (t.getMessage() != null && t.getMessage().contains("too large")) {
                return true;
            }
        }
        return false;
    }

    private static Optional<Refusal> address(HttpServletRequest request) {
        String path = request.getServletPath() + (request.getPathInfo() == null ? "" : request.getPathInfo());
        return isText(path) ? Optional.empty() : Optional.of(Refusal.of("address", path, "refused.allowed.text"));
    }

    private static Optional<Refusal> headers(HttpServletRequest request) {
        return Collections.list(request.getHeaderNames()).stream()
                .filter(n -> !Collections.list(request.getHeaders(n)).stream().allMatch(UnreadableRequests::isText))
                .findFirst()
                .map(n -> Refusal.of(n, request.getHeader(n), "refused.allowed.text"));
    }

    private static Optional<Refusal> parameters(Map<String, String[]> parameters) {
        for (Map.Entry<String, String[]> parameter : parameters.entrySet()) {
            String name = parameter.getKey();
            if (!NAME.matcher(name).matches()) {
                return Optional.of(Refusal.of("name", name, "refused.allowed.name"));
            }
            for (String value : parameter.getValue()) {
                if (!isText(value)) {
                    return Optional.of(Refusal.of(name, value, "refused.allowed.text"));
                }
                if (value.length() > LONGEST_VALUE) {
                    return Optional.of(Refusal.of(name, value, "refused.allowed.length", LONGEST_VALUE));
                }
            }
        }
        return Optional.empty();
    }

    /** Whether people can have typed it: no control but tab and line ends, and no half of a pair of surrogates. */
    private static boolean isText(String value) {
        return value.codePoints()
                .noneMatch(c -> c < 0x20 && c != '\t' && c != '\n' && c != '\r' || c >= 0xD800 && c <= 0xDFFF);
    }
}
