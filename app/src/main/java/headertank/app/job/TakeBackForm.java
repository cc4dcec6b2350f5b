package headertank.app.job;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;

/**
 * Why a hand-over was none.
 *
 * @param version of the job that was on show
 */
record TakeBackForm(
        @NotBlank(message = "{job.reason.missing}") @Size(max = 500, message = "{field.long}")
        String reason,

        int version) {

    TakeBackForm {
        reason = reason == null ? "" : reason.strip();
    }

    static TakeBackForm empty(int version) {
        return new TakeBackForm("", version);
    }
}
