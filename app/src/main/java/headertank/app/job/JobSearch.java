package headertank.app.job;

import headertank.app.shop.CurrentUser;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.core.simple.JdbcClient.StatementSpec;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Jobs of the current shop by what somebody looks for: open or closed ones, by words, in an order. */
@Component
@Transactional(readOnly = true)
class JobSearch {

    /** In which order jobs are listed. */
    enum Sort {
        PROMISED("j.promised_on, j.id"),
        PLATE("c.plate, j.id"),
        CUSTOMER("lower(u.name), j.id"),
        STAGE("j.stage, j.promised_on, j.id"),
        NEWEST("j.id desc");

        private final String order;

        Sort(String order) {
            this.order = order;
        }

        /** As it stands in an address. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        /** What an address asks for; empty when the word is unknown. */
        static Optional<Sort> of(String word) {
            return Arrays.stream(values()).filter(s -> s.word().equals(word)).findFirst();
        }
    }

    /**
     * What somebody looks for.
     *
     * @param closed closed jobs instead of open ones
     * @param choice which of the open ones
     * @param words all of them stand in the plate, the car, the customer or what is asked for; see the function {@code jobs_with}
     */
    record Wanted(boolean closed, Queue.Choice choice, String words, Sort sort) {}

    private static final String WANTED = """
             and (j.closed_as is not null) = :closed
             and (:anyStage or j.stage in (:stages)) and j.promised_on <= :until
             and (btrim(:words) = '' or j.id in (select all_words('jobs_with', :shop, :words)))
            """;
    private static final LocalDate AFTER_ALL = LocalDate.of(9999, 12, 31);

    private final JdbcClient jdbc;
    private final CurrentUser user;

    JobSearch(JdbcClient jdbc, CurrentUser user) {
        this.jdbc = jdbc;
        this.user = user;
    }

    List<JobLine> find(Wanted wanted, int offset, int limit) {
        return query(Queue.JOB + WANTED + " order by " + wanted.sort().order + " limit :limit offset :offset", wanted)
                .param("limit", limit)
                .param("offset", offset)
                .query(Queue::line)
                .list();
    }

    int count(Wanted wanted) {
        return query("select count(*) from (" + Queue.JOB + WANTED + ") found", wanted)
                .query(Integer.class)
                .single();
    }

    private StatementSpec query(String sql, Wanted wanted) {
        List<String> stages = wanted.choice().stages().stream().map(Enum::name).toList();
        return jdbc.sql(sql)
                .param("shop", user.shopId())
                .param("closed", wanted.closed())
                .param("anyStage", stages.isEmpty())
                .param("stages", stages.isEmpty() ? List.of("") : stages)
                .param(
                        "until",
                        wanted.choice().until() == null
                                ? AFTER_ALL
                                : wanted.choice().until())
                .param("words", wanted.words());
    }
}
