package headertank.app.backup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import headertank.app.check.Specs;
import headertank.app.check.stored.Decision;
import headertank.app.database.DatabaseTest;
import headertank.app.database.OwnersHand;
import headertank.app.given.Given;
import headertank.app.shop.Role;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import tools.jackson.databind.json.JsonMapper;

/** The file that the owner's button makes, and what it takes to bring it back. */
@DatabaseTest
class BackupIT {

    private static final String PASSPHRASE = "five invented words in a row";

    @TempDir
    Path folder;

    @Autowired
    Given given;

    @Autowired
    MockMvc mvc;

    @Autowired
    OwnersHand owner;

    @Autowired
    Flyway flyway;

    @Autowired
    BackupStore here;

    @Autowired
    BackupFilesStore files;

    @Autowired
    JsonMapper json;

    @Test
    void whatTheOwnersButtonMakesComesBackWholeAndNothingElseDoes() throws Exception {
        Given.Workshop shop = given.aWorkshop(Role.values());
        long car = shop.aCar(Specs.easy(), "street");
        shop.sign(shop.aCheck(car), Decision.HOLD_BACK, "a remark\twith \\ and \u00e4");
        Path file = fromTheButton(shop);
        List<Manifest.Table> before = here.write(folder.resolve("now")).tables();
        assertThat(before).filteredOn(t -> t.name().equals("sign_off")).first().returns(1L, Manifest.Table::rows);

        DataSource database = owner.emptyDatabase("brought_back");
        Flyway into = into(database);
        new SchemaStore(files, file.toString(), PASSPHRASE).migrate(into);
        assertThat(new BackupStore(database, json, "")
                        .write(folder.resolve("then"))
                        .tables())
                .isEqualTo(before);
        lifeGoesOn(JdbcClient.create(database), shop.shop());

        assertThatThrownBy(() -> new SchemaStore(files, file.toString(), PASSPHRASE).migrate(into))
                .isInstanceOf(BackupException.class)
                .hasMessageContaining("holds records already");
        onlyWholeFiles(file);
        severalShopsAreNotHandedOut(shop);
    }

    private Path fromTheButton(Given.Workshop shop) throws Exception {
        mvc.perform(post("/backup")
                        .param("passphrase", "short")
                        .with(shop.with(Role.OWNER))
                        .with(csrf()))
                .andExpect(status().isUnprocessableContent());
        byte[] sealed = mvc.perform(post("/backup")
                        .param("passphrase", PASSPHRASE)
                        .with(shop.with(Role.OWNER))
                        .with(csrf()))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsByteArray();
        return Files.write(folder.resolve("backup"), sealed);
    }

    private Flyway into(DataSource database) {
        return Flyway.configure()
                .configuration(flyway.getConfiguration())
                .dataSource(database)
                .load();
    }

    /** New rows get new numbers, and what is kept for ever still is. */
    private static void lifeGoesOn(JdbcClient back, long shop) {
        assertThat(back.sql("insert into headertank.customer (shop_id, name) values (:shop, 'New') returning id")
                        .param("shop", shop)
                        .query(Long.class)
                        .single())
                .isPositive();
        assertThatThrownBy(() ->
                        back.sql("update headertank.sign_off set remark = 'x'").update())
                .hasMessageContaining("never changed or removed");
    }

    private void onlyWholeFiles(Path file) throws IOException {
        refused(file, "another passphrase than that", "does not fit");
        byte[] sealed = Files.readAllBytes(file);
        sealed[sealed.length / 2] ^= 1;
        refused(Files.write(folder.resolve("changed"), sealed), PASSPHRASE, "has been changed or cut");
        refused(Files.writeString(folder.resolve("text"), "no backup"), "", "is no backup");
        Manifest now = here.write(folder.resolve("open"));
        refused(
                file(new Manifest(1, "9.9", "9999", now.takenAt(), now.tables())),
                "",
                "was made by a newer release, 9.9");
        refused(file(now), "", "are not those that the backup");
    }

    /** A file that says it holds something, and holds nothing. */
    private Path file(Manifest manifest) throws IOException {
        Path file = folder.resolve("empty");
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
            zip.putNextEntry(new ZipEntry(BackupFilesStore.MANIFEST));
            zip.write(json.writeValueAsBytes(manifest));
        }
        return file;
    }

    private void refused(Path file, String passphrase, String why) {
        Flyway empty = into(owner.emptyDatabase("stays_empty"));
        assertThatThrownBy(() -> new SchemaStore(files, file.toString(), passphrase).migrate(empty))
                .isInstanceOf(BackupException.class)
                .hasMessageContaining(why);
    }

    private void severalShopsAreNotHandedOut(Given.Workshop shop) throws Exception {
        given.aWorkshop(Role.OWNER);
        mvc.perform(post("/backup").with(shop.with(Role.OWNER)).with(csrf())).andExpect(status().isConflict());
    }

    @Test
    void anOlderProgramRefusesTheTablesOfANewerOne() {
        DataSource database = owner.emptyDatabase("of_a_newer_one");
        Flyway into = into(database);
        SchemaStore schema = new SchemaStore(files, "", "");
        schema.migrate(into);
        schema.migrate(into);
        JdbcClient.create(database).sql("""
                        insert into headertank.flyway_schema_history
                          (installed_rank, version, description, type, script, checksum, installed_by, execution_time, success)
                        values (9999, '9999', 'later', 'SQL', 'V9999__later.sql', 1, 'x', 1, true)""").update();
        assertThatThrownBy(() -> schema.migrate(into))
                .isInstanceOf(BackupException.class)
                .hasMessageContaining("newer release: their tables have version 9999");
    }
}
