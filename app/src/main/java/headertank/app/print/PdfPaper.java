package headertank.app.print;

import com.openhtmltopdf.extend.FSStream;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.PageSizeUnits;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.springframework.stereotype.Component;

/** Makes a PDF of a page of well-formed XHTML, with its own fonts inside. Reads nothing but files of this program. */
@Component
class PdfPaper {

    /** Scheme by which a page names a file of this program: {@code sheet:print/sheet.css}. */
    private static final String SCHEME = "sheet";

    byte[] of(String xhtml, PageSize paper) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            new PdfRendererBuilder()
                    .useFastMode()
                    .useDefaultPageSize(paper.widthMm(), paper.heightMm(), PageSizeUnits.MM)
                    .useSVGDrawer(new BatikSVGDrawer())
                    .useFont(() -> resource("fonts/DejaVuSans.ttf"), "Sheet", 400, FontStyle.NORMAL, true)
                    .useFont(() -> resource("fonts/DejaVuSans-Bold.ttf"), "Sheet", 700, FontStyle.NORMAL, true)
                    // Drawings know a font by its family alone.
                    .useFont(() -> resource("fonts/DejaVuSans-Bold.ttf"), "SheetBold", 400, FontStyle.NORMAL, true)
                    .useProtocolsStreamImplementation(uri -> new OwnFile(uri.substring(SCHEME.length() + 1)), SCHEME)
                    .withHtmlContent(xhtml, SCHEME + ":")
                    .toStream(out)
                    .run();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    private static InputStream resource(String path) {
        return PdfPaper.class.getResourceAsStream("/" + path);
    }

    /** A file on the class path. */
    private record OwnFile(String path) implements FSStream {

        @Override
        public InputStream getStream() {
            return resource(path);
        }

        @Override
        public Reader getReader() {
            return new InputStreamReader(getStream(), StandardCharsets.UTF_8);
        }
    }
}
