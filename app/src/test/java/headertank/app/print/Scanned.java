package headertank.app.print;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;

/** Reads QR codes from paper, as a phone does. */
final class Scanned {

    private Scanned() {}

    /** The code on the first page of a PDF. */
    static String firstPage(byte[] pdf) throws IOException, ReaderException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return read(new PDFRenderer(document).renderImageWithDPI(0, 200));
        }
    }

    static String read(BufferedImage image) throws ReaderException {
        int w = image.getWidth();
        int h = image.getHeight();
        RGBLuminanceSource source = new RGBLuminanceSource(w, h, image.getRGB(0, 0, w, h, null, 0, w));
        return new QRCodeReader()
                .decode(new BinaryBitmap(new HybridBinarizer(source)), Map.of(DecodeHintType.TRY_HARDER, Boolean.TRUE))
                .getText();
    }
}
