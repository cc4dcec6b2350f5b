package headertank.app.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.google.zxing.ReaderException;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is drawn as a code reads back as what was meant. */
class QrCodeTest {

    private static final Pattern RUN = Pattern.compile("M(\\d+) (\\d+)h(\\d+)v1h-\\d+z");

    @ParameterizedTest
    @ValueSource(strings = {"http://localhost:8080/cars/1", "https://tank.example.org/shop/cars/9223372036854775807"})
    void readsBack(String text) throws ReaderException {
        QrCode code = QrCode.of(text);
        int scale = 6;
        BufferedImage image = new BufferedImage(scale * code.size(), scale * code.size(), BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, image.getWidth(), image.getHeight());
        pen.setColor(Color.BLACK);
        Matcher run = RUN.matcher(code.path());
        while (run.find()) {
            pen.fillRect(
                    scale * Integer.parseInt(run.group(1)),
                    scale * Integer.parseInt(run.group(2)),
                    scale * Integer.parseInt(run.group(3)),
                    scale);
        }
        pen.dispose();
        assertThat(Scanned.read(image)).isEqualTo(text);
    }

    @Test
    void tooLongATextIsRefused() {
        assertThatThrownBy(() -> QrCode.of("x".repeat(5000))).isInstanceOf(IllegalArgumentException.class);
    }
}
