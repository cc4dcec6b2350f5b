package headertank.app.fault;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A backup from the owner's button, brought back on another machine by a start of the program that names the file. */
class NewMachineIT {

    private static final String PASSPHRASE = "another six invented words of mine";

    @TempDir
    Path old;

    @TempDir
    Path fresh;

    @Test
    void theShopGoesOnWhereTheBackupWasMade() throws Exception {
        Path file = fresh.resolve("the.backup");
        try (Instance instance = Instance.on(old)) {
            Clerk clerk = new Clerk(instance.port());
            clerk.found(instance.ownersCode());
            assertThat(clerk.adds("Before the backup")).isTrue();
            HttpResponse<byte[]> sent = clerk.send("/backup", Map.of("passphrase", PASSPHRASE));
            assertThat(sent.statusCode()).isEqualTo(200);
            Files.write(file, sent.body());
            assertThat(clerk.adds("After the backup")).isTrue();
        }
        String from = "--headertank.restore.from=" + file;
        Path data = fresh.resolve("data");
        try (Instance wrong = Instance.on(data, from, "--headertank.backup.passphrase=not that one at all")) {
            assertThat(wrong.end()).contains("passphrase does not fit").doesNotContain("at headertank.");
        }
        String passphrase = "--headertank.backup.passphrase=" + PASSPHRASE;
        try (Instance instance = Instance.on(data, from, passphrase)) {
            Clerk clerk = new Clerk(instance.port());
            assertThat(instance.said())
                    .contains("counts and hashes are those of the backup", "What was brought back is proven");
            clerk.signIn();
            assertThat(clerk.get("/customers").body())
                    .contains("Before the backup")
                    .doesNotContain("After the backup");
            assertThat(clerk.adds("On the new machine")).isTrue();
        }
        try (Instance again = Instance.on(data, from, passphrase)) {
            assertThat(again.end()).contains("holds records already");
        }
    }
}
