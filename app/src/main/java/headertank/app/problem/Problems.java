package headertank.app.problem;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.List;
import org.springframework.http.HttpStatus;
import org.springframework.http.HttpStatusCode;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import org.springframework.stereotype.Component;
import tools.jackson.databind.json.JsonMapper;

/** Builds problem details (RFC 9457) and writes them where no controller is at hand. */
@Component
public class Problems {

    private final JsonMapper mapper;

    Problems(JsonMapper mapper) {
        this.mapper = mapper;
    }

    /** True for the paths that programs call. */
    public static boolean isForProgram(HttpServletRequest request) {
        Object forwarded = request.getAttribute("jakarta.servlet.error.request_uri");
        String path = forwarded == null ? request.getRequestURI() : forwarded.toString();
        return path.startsWith(request.getContextPath() + "/api/");
    }

    static ProblemDetail detail(HttpStatusCode status, String detail, HttpServletRequest request) {
        ProblemDetail problem = ProblemDetail.forStatus(status);
        if (detail != null) {
            problem.setDetail(detail);
        }
        String id = RequestId.of(request);
        if (!id.isEmpty()) {
            problem.setProperty("requestId", id);
        }
        return problem;
    }

    static ProblemDetail fields(List<FieldProblem> fields, HttpServletRequest request) {
        ProblemDetail problem =
                detail(HttpStatus.UNPROCESSABLE_CONTENT, fields.size() + " fields are not accepted.", request);
        problem.setProperty("fields", fields);
        return problem;
    }

    /** Writes a problem straight to the answer; for security filters. */
    public void write(HttpServletRequest request, HttpServletResponse response, HttpStatus status, String detail)
            throws IOException {
        response.setStatus(status.value());
        response.setContentType(MediaType.APPLICATION_PROBLEM_JSON_VALUE);
        response.getOutputStream().write(mapper.writeValueAsBytes(detail(status, detail, request)));
    }
}
