package headertank.app.backup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A file that a passphrase opens: all of it or nothing. */
class SealedFileTest {

    private static final String PASSPHRASE = "six invented words for a test";

    /** Two whole blocks and a part of a third. */
    private static final int LENGTH = 2_500_000;

    @Test
    void whatWasSealedComesOutAsItWentInAndTellsNothingBefore() throws Exception {
        byte[] plain = new byte[LENGTH];
        Arrays.fill(plain, (byte) 'a');
        byte[] sealed = sealed(plain);
        assertThat(new String(sealed, java.nio.charset.StandardCharsets.ISO_8859_1))
                .doesNotContain("aaaaaaaaaa");
        assertThat(sealed(plain)).as("the same once more").isNotEqualTo(sealed);
        assertThat(opened(sealed, PASSPHRASE)).isEqualTo(plain);
        assertThat(opened(sealed(new byte[0]), PASSPHRASE)).isEmpty();
    }

    @Test
    void anotherPassphraseAChangeACutOrExchangedBlocksOpenNothing() throws Exception {
        byte[] plain = new byte[LENGTH];
        new Random(1).nextBytes(plain);
        byte[] sealed = sealed(plain);
        refused(sealed, PASSPHRASE + ".");
        byte[] changed = sealed.clone();
        changed[sealed.length / 2] ^= 1;
        refused(changed, PASSPHRASE);
        int head = SealedFile.headLength() + 16;
        int block = (1 << 20) + 16 + 5;
        refused(Arrays.copyOf(sealed, head + 2 * block), PASSPHRASE);
        refused(Arrays.copyOf(sealed, sealed.length - 1), PASSPHRASE);
        byte[] cutAndCalledLast = Arrays.copyOf(sealed, head + block);
        cutAndCalledLast[head + 4] = 1;
        refused(cutAndCalledLast, PASSPHRASE);
        byte[] exchanged = sealed.clone();
        System.arraycopy(sealed, head, exchanged, head + block, block);
        System.arraycopy(sealed, head + block, exchanged, head, block);
        refused(exchanged, PASSPHRASE);
        refused(Arrays.copyOf(sealed, sealed.length + 1), PASSPHRASE);
    }

    private static byte[] sealed(byte[] plain) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        SealedFile.seal(new ByteArrayInputStream(plain), out, PASSPHRASE);
        return out.toByteArray();
    }

    private static byte[] opened(byte[] sealed, String passphrase) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        SealedFile.open(new ByteArrayInputStream(sealed), out, passphrase);
        return out.toByteArray();
    }

    private static void refused(byte[] sealed, String passphrase) {
        assertThatThrownBy(() -> opened(sealed, passphrase)).isInstanceOf(BackupException.class);
    }
}
