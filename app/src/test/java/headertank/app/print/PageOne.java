package headertank.app.print;

import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** What stands on the first page of a PDF. */
public final class PageOne {

    private PageOne() {}

    public static String of(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper reader = new PDFTextStripper();
            reader.setEndPage(1);
            return reader.getText(document).replaceAll("\\s+", " ");
        }
    }
}
