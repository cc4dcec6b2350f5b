package headertank.app.handover;

import headertank.app.gate.CarFault;
import jakarta.validation.constraints.AssertTrue;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.UUID;

/**
 * Why a fault no longer stands in the way.
 *
 * @param how by a newer revision, or for a reason
 */
public record ClearingForm(
        @NotNull(message = "{handover.key.missing}") UUID key,
        @NotNull(message = "{handover.clear.how}") CarFault.How how,
        @Size(max = 1000, message = "{field.long}") String reason) {

    public ClearingForm {
        reason = reason == null ? "" : reason.strip();
    }

    /** A reading clears by being entered; a reason has words. */
    @AssertTrue(message = "{handover.clear.reason}")
    public boolean isReasoned() {
        return how == CarFault.How.REVISION || !reason.isBlank();
    }

    public static ClearingForm empty() {
        return new ClearingForm(UUID.randomUUID(), null, "");
    }
}
