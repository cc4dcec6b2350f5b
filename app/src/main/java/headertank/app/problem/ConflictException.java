package headertank.app.problem;

import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.ResponseStatus;

/** The record is not, or no longer, in the state this needs. The key names the sentence in the message files. */
@ResponseStatus(HttpStatus.CONFLICT)
public class ConflictException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String messageKey;
    private final transient Object[] arguments;

    public ConflictException(String messageKey, Object... arguments) {
        super(messageKey);
        this.messageKey = messageKey;
        this.arguments = arguments.clone();
    }

    public String messageKey() {
        return messageKey;
    }

    public Object[] arguments() {
        return arguments == null ? new Object[0] : arguments.clone();
    }
}
