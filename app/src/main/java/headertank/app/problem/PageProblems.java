package headertank.app.problem;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.http.HttpStatus;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.method.annotation.MethodArgumentTypeMismatchException;

/** Failures of a page that carry no status of their own. */
@ControllerAdvice(annotations = Controller.class)
class PageProblems {

    /** An id in the address that is not a number names nothing. */
    @ExceptionHandler
    void notAnId(MethodArgumentTypeMismatchException e, HttpServletResponse response) throws IOException {
        boolean inAddress = e.getParameter().hasParameterAnnotation(PathVariable.class);
        response.sendError(inAddress ? HttpStatus.NOT_FOUND.value() : HttpStatus.BAD_REQUEST.value());
    }

    @ExceptionHandler
    void somebodyElseSaved(ObjectOptimisticLockingFailureException e, HttpServletResponse response) throws IOException {
        response.sendError(HttpStatus.CONFLICT.value());
    }
}
