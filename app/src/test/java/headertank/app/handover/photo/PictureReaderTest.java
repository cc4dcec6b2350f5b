package headertank.app.handover.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.lang.management.ManagementFactory;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Arrays;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PictureReaderTest {

    @ParameterizedTest
    @ValueSource(strings = {"jpeg", "png"})
    void aLargePictureIsMadeSmallerAndKeptAsJpeg(String format) throws Exception {
        StoredPicture kept = PictureReader.read(Pictures.of(format, 4000, 2000));
        assertThat(kept.width()).isLessThanOrEqualTo(PictureReader.LONGEST_SIDE).isGreaterThan(1000);
        assertThat(kept.height()).isEqualTo(kept.width() / 2);
        BufferedImage small = ImageIO.read(new ByteArrayInputStream(kept.smallJpeg()));
        assertThat(small.getWidth()).isEqualTo(PictureReader.SMALL_SIDE);
        assertThat(kept.jpeg()).startsWith(0xFF, 0xD8, 0xFF);
    }

    @Test
    void whatTheCameraHidIsGoneAndThePictureStandsUpright() throws Exception {
        byte[] sent = Pictures.held(6, 400, 200);
        assertThat(text(sent)).contains(Pictures.HIDDEN);
        assertThat(JpegOrientation.of(sent)).isEqualTo(6);
        StoredPicture kept = PictureReader.read(sent);
        assertThat(text(kept.jpeg())).doesNotContain(Pictures.HIDDEN, "Exif");
        assertThat(kept.width()).isEqualTo(200);
        assertThat(kept.height()).isEqualTo(400);
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(kept.jpeg()));
        assertThat(new Color(image.getRGB(100, 50)).getRed()).isGreaterThan(200);
        assertThat(new Color(image.getRGB(100, 350)).getBlue()).isGreaterThan(200);
    }

    @Test
    void aFileThatSaysNothingOfHowItWasHeldIsUpright() throws Exception {
        assertThat(JpegOrientation.of(Pictures.of("jpeg", 40, 20))).isEqualTo(1);
        byte[] cut = Arrays.copyOf(Pictures.held(6, 40, 20), 30);
        assertThat(JpegOrientation.of(cut)).isEqualTo(1);
    }

    @Test
    void whatIsNoPictureOrAnotherKindIsRefusedWithItsReason() throws Exception {
        refused("<svg xmlns='http://www.w3.org/2000/svg'/>".getBytes(StandardCharsets.UTF_8), "handover.photo.none");
        refused("RIFF0000WEBPVP8 ".getBytes(StandardCharsets.US_ASCII), "handover.photo.other");
        refused("0000ftypheic0000".getBytes(StandardCharsets.US_ASCII), "handover.photo.other");
        refused(new byte[0], "handover.photo.missing");
        refused(Arrays.copyOf(Pictures.of("png", 400, 200), 60), "handover.photo.broken");
        refused(new byte[PictureReader.LARGEST_BYTES + 1], "handover.photo.large");
    }

    @Test
    void aPictureThatClaimsManyPointsIsRefusedBeforeItCostsTimeOrMemory() throws Exception {
        byte[] claims = Pictures.of("png", 40, 20);
        ByteBuffer head = ByteBuffer.wrap(claims);
        head.putInt(16, 12_000).putInt(20, 10_000);
        CRC32 check = new CRC32();
        check.update(claims, 12, 17);
        head.putInt(29, (int) check.getValue());
        var memory = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        long before = memory.getCurrentThreadAllocatedBytes();
        long begun = System.nanoTime();
        refused(claims, "handover.photo.pixels");
        assertThat(memory.getCurrentThreadAllocatedBytes() - before).isLessThan(20_000_000);
        assertThat(Duration.ofNanos(System.nanoTime() - begun)).isLessThan(Duration.ofSeconds(2));
    }

    private static void refused(byte[] file, String key) {
        assertThatThrownBy(() -> PictureReader.read(file)).hasMessage(key);
    }

    private static String text(byte[] file) {
        return new String(file, StandardCharsets.ISO_8859_1);
    }
}
