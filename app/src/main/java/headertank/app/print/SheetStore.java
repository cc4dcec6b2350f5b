package headertank.app.print;

import headertank.app.stored.Sha256;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Notes of sheets that were printed; they are only ever added. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class SheetStore {

    private final JdbcClient jdbc;

    SheetStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void add(long shopId, long checkId, long printedById, byte[] sheet) {
        jdbc.sql("insert into printed_sheet (shop_id, check_run_id, printed_by_id, sheet_sha256) "
                        + "values (:shop, :check, :person, :hash)")
                .param("shop", shopId)
                .param("check", checkId)
                .param("person", printedById)
                .param("hash", Sha256.of(sheet))
                .update();
    }
}
