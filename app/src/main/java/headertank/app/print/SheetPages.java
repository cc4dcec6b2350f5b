package headertank.app.print;

import headertank.app.shop.Shops;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** The delivery sheet of a check and the bay label of a car. */
@Controller
class SheetPages {

    private final Sheets sheets;
    private final Labels labels;
    private final Shops shops;

    SheetPages(Sheets sheets, Labels labels, Shops shops) {
        this.sheets = sheets;
        this.labels = labels;
        this.shops = shops;
    }

    @GetMapping("/checks/{id}/sheet.pdf")
    ResponseEntity<byte[]> sheet(@PathVariable long id, @RequestParam(required = false) String paper) {
        return file(sheets.print(id, size(paper)));
    }

    @GetMapping("/cars/{id}/label.pdf")
    ResponseEntity<byte[]> label(@PathVariable long id) {
        return file(labels.print(id));
    }

    /** What was asked for, else the paper in the shop's printer. */
    private PageSize size(String paper) {
        return paper == null ? PageSize.valueOf(shops.current().paper().name()) : PageSize.ofSheet(paper);
    }

    private static ResponseEntity<byte[]> file(Sheets.Sheet sheet) {
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
