package headertank.app.print;

import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** The delivery sheet of a check. */
@Controller
class SheetPages {

    private final Sheets sheets;

    SheetPages(Sheets sheets) {
        this.sheets = sheets;
    }

    @GetMapping("/checks/{id}/sheet.pdf")
    ResponseEntity<byte[]> sheet(@PathVariable long id) {
        Sheets.Sheet sheet = sheets.print(id);
        return ResponseEntity.ok()
                .contentType(MediaType.APPLICATION_PDF)
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.inline()
                                .filename(sheet.fileName())
                                .build()
                                .toString())
                .body(sheet.pdf());
    }
}
