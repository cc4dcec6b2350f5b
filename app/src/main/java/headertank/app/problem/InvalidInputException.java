package headertank.app.problem;

import java.util.List;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.ResponseStatus;

/** An input with faulty fields, all of them at once. */
@ResponseStatus(HttpStatus.UNPROCESSABLE_CONTENT)
public class InvalidInputException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<FieldProblem> fields;

    public InvalidInputException(List<FieldProblem> fields) {
        super(fields.size() + " fields are not accepted");
        this.fields = List.copyOf(fields);
    }

    public List<FieldProblem> fields() {
        return fields == null ? List.of() : fields;
    }
}
