package headertank.app.problem;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Arrays;
import org.springframework.context.MessageSourceResolvable;
import org.springframework.http.HttpStatus;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.stereotype.Controller;
import org.springframework.validation.FieldError;
import org.springframework.web.bind.MethodArgumentNotValidException;
import org.springframework.web.bind.MissingServletRequestParameterException;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.method.annotation.MethodArgumentTypeMismatchException;
import org.springframework.web.multipart.MultipartFile;

/** Failures of a page that carry no status of their own. */
@ControllerAdvice(annotations = Controller.class)
class PageProblems {

    /** An id in the address that is not a number names nothing. */
    @ExceptionHandler
    void notAnId(MethodArgumentTypeMismatchException e, HttpServletRequest request, HttpServletResponse response)
            throws IOException {
        if (e.getParameter().hasParameterAnnotation(PathVariable.class)) {
            response.sendError(HttpStatus.NOT_FOUND.value());
            return;
        }
        Class<?> type = e.getParameter().nestedIfOptional().getNestedParameterType();
        new Refusal(e.getName(), shown(e.getValue()), Refusal.allowed(type)).leaveWith(request);
        response.sendError(HttpStatus.BAD_REQUEST.value());
    }

    @ExceptionHandler
    void missing(MissingServletRequestParameterException e, HttpServletRequest request, HttpServletResponse response)
            throws IOException {
        Refusal.of(e.getParameterName(), "", "refused.allowed.something").leaveWith(request);
        response.sendError(HttpStatus.BAD_REQUEST.value());
    }

    @ExceptionHandler
    void unbound(UnboundFormException e, HttpServletRequest request, HttpServletResponse response) throws IOException {
        e.refusal().leaveWith(request);
        response.sendError(HttpStatus.BAD_REQUEST.value());
    }

    /** A form without a place on its page for what is wrong with a field. */
    @ExceptionHandler
    void notValid(MethodArgumentNotValidException e, HttpServletRequest request, HttpServletResponse response)
            throws IOException {
        e.getFieldErrors().stream().findFirst().map(PageProblems::refusal).ifPresent(r -> r.leaveWith(request));
        response.sendError(HttpStatus.UNPROCESSABLE_CONTENT.value());
    }

    private static Refusal refusal(FieldError fault) {
        String value = shown(fault.getRejectedValue());
        Object[] arguments = fault.getArguments();
        boolean says = arguments != null && arguments.length == 2 && arguments[1] instanceof MessageSourceResolvable;
        return says
                ? new Refusal(fault.getField(), value, (MessageSourceResolvable) arguments[1])
                : Refusal.of(fault.getField(), value, "refused.allowed.other");
    }

    private static String shown(Object value) {
        if (value instanceof Object[] several) {
            return Arrays.toString(several);
        }
        return value instanceof MultipartFile file ? file.getOriginalFilename() : String.valueOf(value);
    }

    @ExceptionHandler
    void somebodyElseSaved(ObjectOptimisticLockingFailureException e, HttpServletResponse response) throws IOException {
        response.sendError(HttpStatus.CONFLICT.value());
    }
}
