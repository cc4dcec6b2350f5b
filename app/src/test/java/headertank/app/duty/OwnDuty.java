package headertank.app.duty;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** A duty of a shop's own, for tests that change or switch one. */
@Component
public class OwnDuty {

    public static final String ID = "hill-day";
    public static final String LABEL = "Hill climb on a hot day";

    private final JdbcClient jdbc;

    OwnDuty(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Adds it to the shop of an account, in its name. */
    public void add(String login) {
        add(jdbc.sql("select id from account where login = :login")
                .param("login", login)
                .query(Long.class)
                .single());
    }

    /** The same. */
    public void add(long account) {
        jdbc.sql("""
                        insert into duty_version (shop_id, duty_id, number, csv_text, csv_sha256, active, author_id)
                        select shop_id, :id, 1, :csv, sha256(convert_to(:csv, 'UTF8')), true, id
                        from account where id = :account""")
                .param("id", ID)
                .param("csv", text())
                .param("account", account)
                .update();
    }

    /** As it is written. */
    public static String text() {
        try (var file = OwnDuty.class.getResourceAsStream("/duties/street.csv")) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8)
                    .replace("# id: street-day", "# id: " + ID)
                    .replaceFirst("# label: [^\\n]*", "# label: " + LABEL);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
