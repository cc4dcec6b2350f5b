package headertank.app.handover;

import headertank.app.handover.item.ItemOutcome;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.UUID;

/**
 * What is entered for an item; the reading stays as typed.
 *
 * @param key made by whoever fills in the form, so that an entry that is sent twice is stored once
 */
public record EntryForm(
        @NotNull(message = "{handover.key.missing}") UUID key,
        @NotBlank String item,
        @NotNull(message = "{handover.outcome.missing}") ItemOutcome outcome,
        @Size(max = 40, message = "{field.long}") String value,
        @Size(max = 1000, message = "{field.long}") String note) {

    public EntryForm {
        item = item == null ? "" : item.strip();
        value = value == null ? "" : value.strip();
        note = note == null ? "" : note.strip();
    }

    public static EntryForm empty() {
        return new EntryForm(UUID.randomUUID(), "", null, "", "");
    }
}
