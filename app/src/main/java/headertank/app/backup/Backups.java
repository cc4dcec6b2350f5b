package headertank.app.backup;

import headertank.app.audit.AuditTrail;
import headertank.app.problem.ConflictException;
import headertank.app.shop.CurrentUser;
import headertank.app.shop.Shops;
import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/** Makes backups. */
@Service
class Backups {

    private final BackupStore store;
    private final Shops shops;
    private final CurrentUser user;
    private final AuditTrail audit;
    private final TransactionTemplate transactions;

    Backups(BackupStore store, Shops shops, CurrentUser user, AuditTrail audit, TransactionTemplate transactions) {
        this.store = store;
        this.shops = shops;
        this.user = user;
        this.audit = audit;
        this.transactions = transactions;
    }

    /**
     * For whoever has signed in; the file is theirs to remove.
     *
     * @param passphrase that opens it; empty for none
     * @throws ConflictException when other shops keep their records here too, for all are in one file
     */
    Path forOwner(String passphrase) throws IOException {
        if (!shops.isOnlyOne()) {
            throw new ConflictException("backup.several-shops");
        }
        transactions.executeWithoutResult(
                t -> audit.record("backup.made", "shop", user.shopId(), passphrase.isEmpty() ? "" : "sealed"));
        Path file = Files.createTempFile("headertank", ".backup");
        make(file, passphrase);
        return file;
    }

    /** Writes a file; it is there whole or not at all. */
    Manifest make(Path file, String passphrase) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        Path plain = Files.createTempFile(folder, ".backup", ".tmp");
        Path sealed = Files.createTempFile(folder, ".backup", ".tmp");
        try {
            Manifest manifest = store.write(plain);
            if (!passphrase.isEmpty()) {
                try (InputStream in = new BufferedInputStream(Files.newInputStream(plain));
                        OutputStream out = new BufferedOutputStream(Files.newOutputStream(sealed))) {
                    SealedFile.seal(in, out, passphrase);
                }
            }
            Files.move(passphrase.isEmpty() ? plain : sealed, file, StandardCopyOption.REPLACE_EXISTING);
            return manifest;
        } finally {
            Files.deleteIfExists(plain);
            Files.deleteIfExists(sealed);
        }
    }
}
