package headertank.app.known;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;

/**
 * Whether a piece of evidence is used.
 *
 * @param then what is to hold
 * @param reason why
 */
record SwitchForm(
        @NotNull(message = "{known.switch.missing}") Then then,

        @NotBlank(message = "{known.reason.missing}") @Size(max = 1000, message = "{field.long}")
        String reason) {

    /** What may hold. */
    enum Then {
        /** It is not learned from. */
        LEAVE_OUT,
        /** It is learned from, of the car as the revision of that day describes it. */
        USE,
        /** It is learned from, of the car as its newest revision describes it. */
        USE_AS_NEWEST
    }

    SwitchForm {
        reason = reason == null ? "" : reason.strip();
    }
}
