package headertank.app.problem;

import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.ResponseStatus;

/** A form that none of our pages has made: nothing can be shown again. */
@ResponseStatus(HttpStatus.BAD_REQUEST)
public class UnboundFormException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient Refusal refusal;

    public UnboundFormException(Refusal refusal) {
        super("field " + refusal.field());
        this.refusal = refusal;
    }

    Refusal refusal() {
        return refusal;
    }
}
