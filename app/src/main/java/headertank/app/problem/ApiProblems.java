package headertank.app.problem;

import headertank.app.database.DatabaseWatch;
import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.MessageSource;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.HttpStatusCode;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.AuthenticationException;
import org.springframework.validation.FieldError;
import org.springframework.web.bind.MethodArgumentNotValidException;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.bind.annotation.RestControllerAdvice;
import org.springframework.web.context.request.ServletWebRequest;
import org.springframework.web.context.request.WebRequest;
import org.springframework.web.servlet.mvc.method.annotation.ResponseEntityExceptionHandler;

/** Every failure of a REST controller as a problem detail; nothing of the inside shows. */
@Order(Ordered.HIGHEST_PRECEDENCE)
@RestControllerAdvice(annotations = RestController.class)
class ApiProblems extends ResponseEntityExceptionHandler {

    private static final Logger LOG = LoggerFactory.getLogger("headertank.problem");

    private final MessageSource messages;

    ApiProblems(MessageSource messages) {
        this.messages = messages;
    }

    @ExceptionHandler
    ProblemDetail notFound(NotFoundException e, HttpServletRequest request) {
        return Problems.detail(HttpStatus.NOT_FOUND, e.getMessage(), request);
    }

    @ExceptionHandler
    ProblemDetail conflict(ConflictException e, HttpServletRequest request) {
        String text = messages.getMessage(e.messageKey(), e.arguments(), e.messageKey(), request.getLocale());
        return Problems.detail(HttpStatus.CONFLICT, text, request);
    }

    @ExceptionHandler
    ProblemDetail somebodyElseSaved(ObjectOptimisticLockingFailureException e, HttpServletRequest request) {
        return Problems.detail(HttpStatus.CONFLICT, "Somebody else saved this record first.", request);
    }

    @ExceptionHandler
    ProblemDetail invalid(InvalidInputException e, HttpServletRequest request) {
        return Problems.fields(e.fields(), request);
    }

    /** Left to the security filters, which know how to answer. */
    @ExceptionHandler({AccessDeniedException.class, AuthenticationException.class})
    ProblemDetail notAllowed(RuntimeException e) {
        throw e;
    }

    @ExceptionHandler
    ProblemDetail ourBug(Exception e, HttpServletRequest request) throws Exception {
        if (DatabaseWatch.isTold(e)) {
            throw e;
        }
        LOG.error("{} {} failed", request.getMethod(), request.getRequestURI(), e);
        return Problems.detail(HttpStatus.INTERNAL_SERVER_ERROR, "Something went wrong on our side.", request);
    }

    @Override
    protected ResponseEntity<Object> handleMethodArgumentNotValid(
            MethodArgumentNotValidException e, HttpHeaders headers, HttpStatusCode status, WebRequest request) {
        List<FieldProblem> fields =
                e.getBindingResult().getFieldErrors().stream().map(this::field).toList();
        ProblemDetail body = Problems.fields(fields, ((ServletWebRequest) request).getRequest());
        return handleExceptionInternal(e, body, headers, HttpStatus.UNPROCESSABLE_CONTENT, request);
    }

    private FieldProblem field(FieldError error) {
        String pointer =
                "/" + error.getField().replace('.', '/').replace('[', '/').replace("]", "");
        return new FieldProblem(pointer, error.getRejectedValue(), error.getCode(), error.getDefaultMessage());
    }

    @Override
    protected ResponseEntity<Object> createResponseEntity(
            Object body, HttpHeaders headers, HttpStatusCode status, WebRequest request) {
        if (body instanceof ProblemDetail problem) {
            String id = RequestId.of(((ServletWebRequest) request).getRequest());
            if (!id.isEmpty()) {
                problem.setProperty("requestId", id);
            }
        }
        return super.createResponseEntity(body, headers, status, request);
    }
}
