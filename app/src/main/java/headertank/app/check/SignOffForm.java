package headertank.app.check;

import headertank.app.check.stored.Decision;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;

/**
 * What whoever signs fills in.
 *
 * @param accepted keys of the accepted conditions
 */
public record SignOffForm(
        @NotNull(message = "{check.sign.decision.missing}") Decision decision,
        @Size(max = 2000, message = "{field.long}") String remark,
        List<String> accepted) {

    public SignOffForm {
        remark = remark == null ? "" : remark.strip();
        accepted = accepted == null ? List.of() : List.copyOf(accepted);
    }

    public static SignOffForm empty() {
        return new SignOffForm(null, "", List.of());
    }
}
