package headertank.app.backup;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.SecureRandom;
import java.util.Arrays;
import javax.crypto.AEADBadTagException;
import javax.crypto.Cipher;
import javax.crypto.spec.GCMParameterSpec;
import javax.crypto.spec.SecretKeySpec;
import org.bouncycastle.crypto.generators.Argon2BytesGenerator;
import org.bouncycastle.crypto.params.Argon2Parameters;

/**
 * A file that a passphrase opens: blocks under AES-256 in Galois/Counter Mode (NIST SP 800-38D), key from Argon2id (RFC 9106) and a
 * salt of each file's own. A block's number is its nonce and whether it is the last one is signed with it, so that blocks can be
 * neither changed, exchanged nor left off.
 */
final class SealedFile {

    private static final byte[] HEAD = "headertank-sealed-1\n".getBytes(StandardCharsets.US_ASCII);
    private static final int SALT = 16;
    private static final int BLOCK = 1 << 20;
    private static final int TAG_BITS = 128;

    /** Second recommended choice of RFC 9106, 4: 64 MiB, three passes, four lanes. */
    private static final int MEMORY_KIB = 1 << 16;

    private static final int PASSES = 3;
    private static final int LANES = 4;

    private SealedFile() {}

    /** Whether a file begins as sealed ones do. */
    static boolean begins(byte[] head) {
        return head.length >= HEAD.length && Arrays.equals(Arrays.copyOf(head, HEAD.length), HEAD);
    }

    static int headLength() {
        return HEAD.length;
    }

    static void seal(InputStream plain, OutputStream sealed, String passphrase) throws IOException {
        byte[] salt = new byte[SALT];
        new SecureRandom().nextBytes(salt);
        DataOutputStream out = new DataOutputStream(sealed);
        out.write(HEAD);
        out.write(salt);
        SecretKeySpec key = key(passphrase, salt);
        byte[] next = plain.readNBytes(BLOCK);
        for (long number = 0; ; number++) {
            byte[] block = next;
            next = plain.readNBytes(BLOCK);
            boolean last = next.length == 0;
            byte[] hidden = crypt(Cipher.ENCRYPT_MODE, key, number, last, block);
            out.writeInt(hidden.length);
            out.writeBoolean(last);
            out.write(hidden);
            if (last) {
                out.flush();
                return;
            }
        }
    }

    /** @throws BackupException when the passphrase does not fit, or the file is not whole */
    static void open(InputStream sealed, OutputStream plain, String passphrase) throws IOException {
        DataInputStream in = new DataInputStream(sealed);
        try {
            if (!begins(in.readNBytes(HEAD.length))) {
                throw damaged(null);
            }
            byte[] salt = new byte[SALT];
            in.readFully(salt);
            SecretKeySpec key = key(passphrase, salt);
            boolean last = false;
            for (long number = 0; !last; number++) {
                int length = in.readInt();
                last = in.readBoolean();
                if (length < 0 || length > BLOCK + TAG_BITS / 8) {
                    throw damaged(null);
                }
                byte[] hidden = new byte[length];
                in.readFully(hidden);
                plain.write(crypt(Cipher.DECRYPT_MODE, key, number, last, hidden));
            }
            if (in.read() >= 0) {
                throw damaged(null);
            }
        } catch (EOFException e) {
            throw damaged(e);
        }
    }

    private static BackupException damaged(Exception cause) {
        return new BackupException(
                "The passphrase does not fit the backup, or the file has been changed or cut.",
                "Try the passphrase that was set when it was made, or another copy of the file.",
                cause);
    }

    private static byte[] crypt(int mode, SecretKeySpec key, long number, boolean last, byte[] block) {
        try {
            Cipher cipher = Cipher.getInstance("AES/GCM/NoPadding");
            byte[] nonce = ByteBuffer.allocate(12).putInt(0).putLong(number).array();
            cipher.init(mode, key, new GCMParameterSpec(TAG_BITS, nonce));
            cipher.updateAAD(new byte[] {(byte) (last ? 1 : 0)});
            return cipher.doFinal(block);
        } catch (AEADBadTagException e) {
            throw damaged(e);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }

    private static SecretKeySpec key(String passphrase, byte[] salt) {
        Argon2BytesGenerator argon = new Argon2BytesGenerator();
        argon.init(new Argon2Parameters.Builder(Argon2Parameters.ARGON2_id)
                .withMemoryAsKB(MEMORY_KIB)
                .withIterations(PASSES)
                .withParallelism(LANES)
                .withSalt(salt)
                .build());
        byte[] key = new byte[32];
        argon.generateBytes(passphrase.toCharArray(), key);
        return new SecretKeySpec(key, "AES");
    }
}
