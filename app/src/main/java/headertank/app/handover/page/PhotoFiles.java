package headertank.app.handover.page;

import headertank.app.handover.Handovers;
import java.time.Duration;
import org.springframework.http.CacheControl;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** Pictures as files. They are always JPEG, made by us, and the browser is told not to guess otherwise. */
@Controller
class PhotoFiles {

    private static final CacheControl OWN_DAY =
            CacheControl.maxAge(Duration.ofDays(1)).cachePrivate();

    private final Handovers handovers;

    PhotoFiles(Handovers handovers) {
        this.handovers = handovers;
    }

    @GetMapping("/handover-photos/{id}")
    ResponseEntity<byte[]> whole(@PathVariable long id) {
        return file(id, false);
    }

    @GetMapping("/handover-photos/{id}/small")
    ResponseEntity<byte[]> small(@PathVariable long id) {
        return file(id, true);
    }

    private ResponseEntity<byte[]> file(long id, boolean small) {
        return ResponseEntity.ok()
                .contentType(MediaType.IMAGE_JPEG)
                .header("X-Content-Type-Options", "nosniff")
                .header("Content-Disposition", "inline; filename=\"handover-photo-" + id + ".jpg\"")
                .cacheControl(OWN_DAY)
                .body(handovers.photo(id, small));
    }
}
