package headertank.app.backup;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The owner's button: one file with everything. */
@Controller
class BackupPages {

    /** Characters of a passphrase, as of a password. */
    private static final int SHORTEST = 15;

    private static final int LONGEST = 200;

    private final Backups backups;
    private final BackupRounds rounds;

    BackupPages(Backups backups, BackupRounds rounds) {
        this.backups = backups;
        this.rounds = rounds;
    }

    @GetMapping("/backup")
    String page(Model model) throws IOException {
        model.addAttribute(
                "newest", rounds.newest().map(p -> p.getFileName().toString()).orElse(""));
        return "backup/page";
    }

    /** @param passphrase without which nobody opens the file; empty for none */
    @PostMapping("/backup")
    String make(@RequestParam(defaultValue = "") String passphrase, Model model, HttpServletResponse response)
            throws IOException {
        if (!passphrase.isEmpty() && (passphrase.length() < SHORTEST || passphrase.length() > LONGEST)) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            model.addAttribute("fault", true);
            return page(model);
        }
        Path file = backups.forOwner(passphrase);
        try {
            response.setContentType(MediaType.APPLICATION_OCTET_STREAM_VALUE);
            response.setContentLengthLong(Files.size(file));
            response.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
            response.setHeader(
                    HttpHeaders.CONTENT_DISPOSITION,
                    ContentDisposition.attachment()
                            .filename(BackupRounds.name())
                            .build()
                            .toString());
            Files.copy(file, response.getOutputStream());
            return null;
        } finally {
            Files.deleteIfExists(file);
        }
    }
}
