package headertank.app.database;

import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** The one row that says which calc-core has been here: what the program keeps about itself, not what anybody entered. */
@Component
class ReleaseStore {

    private final JdbcClient jdbc;

    ReleaseStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Raises the note, never lowers it. */
    void raise(String version) {
        jdbc.sql("""
                        insert into calc_core_release (version) values (:version)
                        on conflict (only_row) do update set version = excluded.version
                        where major_minor(excluded.version) > major_minor(calc_core_release.version)""").param("version", version).update();
    }
}
