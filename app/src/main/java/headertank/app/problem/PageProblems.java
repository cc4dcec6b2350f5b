package headertank.app.problem;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.http.HttpStatus;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;

/** Failures of a page that carry no status of their own. */
@ControllerAdvice(annotations = Controller.class)
class PageProblems {

    @ExceptionHandler
    void somebodyElseSaved(
            ObjectOptimisticLockingFailureException e, HttpServletRequest request, HttpServletResponse response)
            throws IOException {
        response.sendError(HttpStatus.CONFLICT.value());
    }
}
