package headertank.app.check;

import headertank.app.check.stored.CheckFormat;
import headertank.app.check.stored.CheckInput;
import headertank.app.check.stored.CheckLine;
import headertank.app.check.stored.CheckResult;
import headertank.app.check.stored.Decision;
import headertank.app.check.stored.DutyResult;
import headertank.app.check.stored.SignOff;
import headertank.app.check.stored.StoredCheck;
import headertank.app.check.stored.StoredVerdict;
import headertank.app.problem.NotFoundException;
import headertank.app.stored.Sha256;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Rows of checks and their signatures. Every question names the shop. */
@Component
@Transactional(readOnly = true)
class CheckStore {

    private static final String LINE = """
            select c.id, y.car_id, c.revision_id, y.revision_number, c.created_at, a.name as author,
                   c.calc_core_version, y.newer_revision, y.newest_revision_number, y.newer_calc_core, y.changed_policy,
                   y.changed_evidence,
                   s.signer_id, b.name as signer, s.decision, s.remark, s.conditions, s.signed_sha256, s.signed_at,
                   (select string_agg(concat_ws('|', d ->> 'id', d ->> 'verdict', d ->> 'label'), chr(10) order by n)
                    from jsonb_array_elements(c.result_text::jsonb -> 'duties') with ordinality as x (d, n)) as verdicts
            from check_run c
            join check_currency y on y.check_run_id = c.id
            join account a on a.id = c.author_id
            left join sign_off_now s on s.check_run_id = c.id
            left join account b on b.id = s.signer_id
            where c.shop_id = :shop
            """;

    private final JdbcClient jdbc;

    CheckStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Whether a stored check holds exactly this. */
    boolean holds(long id, CheckInput input, CheckResult result) {
        return jdbc.sql("select input_sha256 = :input and result_sha256 = :result from check_run where id = :id")
                .param("id", id)
                .param("input", Sha256.of(CheckFormat.write(input)))
                .param("result", Sha256.of(CheckFormat.write(result)))
                .query(Boolean.class)
                .single();
    }

    long insert(long shop, long author, CheckInput input, CheckResult result) {
        String in = CheckFormat.write(input);
        String out = CheckFormat.write(result);
        return jdbc.sql("""
                        insert into check_run (shop_id, revision_id, author_id, duties, calc_core_version, rule_versions,
                          seed, input_format, input_text, input_sha256, result_format, result_text, result_sha256, evidence)
                        values (:shop, :revision, :author, :duties, :version, :rules, :seed, :inputFormat, :input,
                          :inputHash, :resultFormat, :result, :resultHash, :evidence) returning id""")
                .param("shop", shop)
                .param("revision", input.revisionId())
                .param("author", author)
                .param(
                        "duties",
                        String.join(
                                ",",
                                result.duties().stream().map(DutyResult::id).toList()))
                .param("version", result.calcCoreVersion())
                .param(
                        "rules",
                        String.join(
                                ",",
                                result.plugIns().stream()
                                        .map(p -> p.id() + "@" + p.version())
                                        .toList()))
                .param("seed", result.seed())
                .param("inputFormat", CheckInput.FORMAT)
                .param("input", in)
                .param("inputHash", Sha256.of(in))
                .param("resultFormat", CheckResult.FORMAT)
                .param("result", out)
                .param("resultHash", Sha256.of(out))
                .param(
                        "evidence",
                        input.learned().map(CheckInput.LearnedFrom::used).orElse(""))
                .query(Long.class)
                .single();
    }

    /** A signature, which replaces the one that the check has, if any. */
    long sign(long shop, long signer, long check, SignOffForm form, List<String> accepted, byte[] signedSha256) {
        return jdbc.sql("""
                        insert into sign_off (shop_id, check_run_id, signer_id, decision, remark, conditions, signed_sha256,
                                              replaces_id)
                        values (:shop, :check, :signer, :decision, :remark, :conditions, :hash,
                                (select id from sign_off_now where check_run_id = :check)) returning id""")
                .param("shop", shop)
                .param("check", check)
                .param("signer", signer)
                .param("decision", form.decision().name())
                .param("remark", form.remark())
                .param("conditions", String.join(",", accepted))
                .param("hash", signedSha256)
                .query(Long.class)
                .single();
    }

    CheckLine line(long shop, long id) {
        return jdbc.sql(LINE + " and c.id = :id")
                .param("shop", shop)
                .param("id", id)
                .query(CheckStore::line)
                .optional()
                .orElseThrow(() -> new NotFoundException("check", id));
    }

    List<CheckLine> ofCar(long shop, long car, int limit) {
        return jdbc.sql(LINE + " and y.car_id = :car order by c.created_at desc, c.id desc limit :limit")
                .param("shop", shop)
                .param("car", car)
                .param("limit", limit)
                .query(CheckStore::line)
                .list();
    }

    List<CheckLine> ofNow(long shop, int limit) {
        return jdbc.sql(LINE
                        + " and not y.newer_calc_core and not y.changed_policy"
                        + " and not y.changed_evidence order by c.created_at desc, c.id desc limit :limit")
                .param("shop", shop)
                .param("limit", limit)
                .query(CheckStore::line)
                .list();
    }

    Optional<Long> newestOf(long shop, long revisionId) {
        return jdbc.sql("select id from check_run where shop_id = :shop and revision_id = :revision "
                        + "order by created_at desc, id desc limit 1")
                .param("shop", shop)
                .param("revision", revisionId)
                .query(Long.class)
                .optional();
    }

    StoredCheck whole(long shop, long id) {
        CheckLine line = line(shop, id);
        return jdbc.sql("select result_format, result_text, input_sha256, result_sha256 from check_run where id = :id")
                .param("id", id)
                .query((row, n) -> new StoredCheck(
                        line,
                        CheckFormat.readResult(row.getInt("result_format"), row.getString("result_text")),
                        hex(row.getBytes("input_sha256")),
                        hex(row.getBytes("result_sha256"))))
                .single();
    }

    CheckInput input(long shop, long id) {
        return jdbc.sql("select input_format, input_text from check_run where shop_id = :shop and id = :id")
                .param("shop", shop)
                .param("id", id)
                .query((row, n) -> CheckFormat.readInput(row.getInt("input_format"), row.getString("input_text")))
                .optional()
                .orElseThrow(() -> new NotFoundException("check", id));
    }

    static String hex(byte[] bytes) {
        return HexFormat.of().formatHex(bytes);
    }

    private static CheckLine line(ResultSet row, int n) throws SQLException {
        return new CheckLine(
                row.getLong("id"),
                row.getLong("car_id"),
                row.getLong("revision_id"),
                row.getInt("revision_number"),
                row.getTimestamp("created_at").toInstant(),
                row.getString("author"),
                verdicts(row.getString("verdicts")),
                row.getString("calc_core_version"),
                row.getBoolean("newer_revision") ? row.getInt("newest_revision_number") : 0,
                row.getBoolean("newer_calc_core"),
                row.getBoolean("changed_policy"),
                row.getBoolean("changed_evidence"),
                signOff(row));
    }

    private static List<CheckLine.DutyVerdictLine> verdicts(String text) {
        return text.lines()
                .map(l -> l.split("\\|", 3))
                .map(p -> new CheckLine.DutyVerdictLine(p[0], p[2], StoredVerdict.valueOf(p[1])))
                .toList();
    }

    private static Optional<SignOff> signOff(ResultSet row) throws SQLException {
        Timestamp at = row.getTimestamp("signed_at");
        if (at == null) {
            return Optional.empty();
        }
        String conditions = row.getString("conditions");
        return Optional.of(new SignOff(
                row.getLong("signer_id"),
                row.getString("signer"),
                Decision.valueOf(row.getString("decision")),
                row.getString("remark"),
                conditions.isEmpty() ? List.of() : Arrays.asList(conditions.split(",")),
                hex(row.getBytes("signed_sha256")),
                at.toInstant()));
    }
}
