package headertank.app.handover.asked;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.UUID;

/**
 * An item is left out for a duty, or asked again.
 *
 * @param item key of the item
 * @param reason why, in words
 */
public record AskedItemForm(
        UUID key,
        @NotBlank String item,
        @NotNull Boolean asked,

        @NotBlank(message = "{handover.asked.reason.missing}") @Size(max = 1000, message = "{field.long}")
        String reason) {

    public AskedItemForm {
        item = item == null ? "" : item.strip();
        reason = reason == null ? "" : reason.strip();
    }

    public static AskedItemForm empty() {
        return new AskedItemForm(null, "", null, "");
    }
}
