package headertank.app.job;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;

/**
 * Why a job pauses or ends.
 *
 * @param version of the job that was on show
 */
record StopForm(
        @NotNull(message = "{job.stop.missing}") How how,

        @NotBlank(message = "{job.reason.missing}") @Size(max = 500, message = "{field.long}")
        String reason,

        int version) {

    /** For a while, or for good. */
    enum How {
        PAUSE,
        CALL_OFF
    }

    StopForm {
        reason = reason == null ? "" : reason.strip();
    }

    static StopForm empty(int version) {
        return new StopForm(null, "", version);
    }
}
