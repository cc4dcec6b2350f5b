package headertank.app.handover.photo;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.UUID;
import org.springframework.web.multipart.MultipartFile;

/**
 * A picture for an item.
 *
 * @param caption what it shows, may be empty; read out where the picture cannot be seen
 */
public record PhotoForm(
        @NotNull(message = "{handover.key.missing}") UUID key,
        @NotBlank String item,

        @Size(max = 300, message = "{field.long}") String caption,

        @NotNull(message = "{handover.photo.missing}") MultipartFile file) {

    public PhotoForm {
        item = item == null ? "" : item.strip();
        caption = caption == null ? "" : caption.strip();
    }

    public static PhotoForm empty() {
        return new PhotoForm(UUID.randomUUID(), "", "", null);
    }
}
