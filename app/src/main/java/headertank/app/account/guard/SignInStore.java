package headertank.app.account.guard;

import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** How often somebody has tried, and which devices an account knows. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class SignInStore {

    private final JdbcClient jdbc;

    SignInStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * Counts a try before anybody looks at its password, so that many at once count as many.
     *
     * @param free tries that cost nothing
     * @param longestS longest pause [s]
     * @return seconds to wait after this try when it was let through, else empty
     */
    Optional<Integer> take(String bucket, int free, int longestS) {
        return jdbc.sql("""
                        insert into sign_in_brake as b (bucket, tries, until, last_at)
                        values (:bucket, 1, clock_timestamp(), clock_timestamp())
                        on conflict (bucket) do update set
                          tries = case when b.last_at < clock_timestamp() - interval '1 day' then 1 else b.tries + 1 end,
                          until = clock_timestamp() + make_interval(secs => case
                            when b.last_at < clock_timestamp() - interval '1 day' or b.tries + 1 < :free then 0
                            else least(:longest, 2 ^ least(16, b.tries + 1 - :free)) end),
                          last_at = clock_timestamp()
                        where b.until <= clock_timestamp()
                        returning greatest(0, ceil(extract(epoch from until - clock_timestamp())))::int""")
                .param("bucket", bucket)
                .param("free", free)
                .param("longest", longestS)
                .query(Integer.class)
                .optional();
    }

    /** Seconds until the next try is let through. */
    int waitS(String bucket) {
        return jdbc.sql(
                        "select greatest(0, ceil(extract(epoch from until - clock_timestamp())))::int from sign_in_brake where bucket = :bucket")
                .param("bucket", bucket)
                .query(Integer.class)
                .optional()
                .orElse(0);
    }

    /** A try that was right does not count. */
    void giveBack(String bucket) {
        jdbc.sql(
                        "update sign_in_brake set tries = greatest(0, tries - 1), until = clock_timestamp() where bucket = :bucket")
                .param("bucket", bucket)
                .update();
    }

    void forget(String bucket) {
        jdbc.sql("delete from sign_in_brake where bucket = :bucket")
                .param("bucket", bucket)
                .update();
    }

    boolean knows(String login, byte[] token) {
        return jdbc.sql("""
                        select exists (select 1 from known_device d join account a on a.id = d.account_id
                                       where a.login = :login and d.token_sha256 = :token)""")
                .param("login", login)
                .param("token", token)
                .query(Boolean.class)
                .single();
    }

    void know(long account, byte[] token) {
        jdbc.sql("""
                        insert into known_device (account_id, token_sha256) values (:account, :token)
                        on conflict (account_id, token_sha256) do update set last_at = clock_timestamp()""").param("account", account).param("token", token).update();
    }

    /** What nobody has asked for in a long time goes. */
    void sweep() {
        jdbc.sql("delete from sign_in_brake where last_at < clock_timestamp() - interval '2 days'")
                .update();
        jdbc.sql("delete from known_device where last_at < clock_timestamp() - interval '180 days'")
                .update();
    }

    /** Who has a login: shop and account. */
    Optional<long[]> account(String login) {
        return jdbc.sql("select shop_id, id from account where login = :login")
                .param("login", login)
                .query((row, n) -> new long[] {row.getLong("shop_id"), row.getLong("id")})
                .optional();
    }

    /** The shop, when there is just one here. */
    Optional<Long> onlyShop() {
        return jdbc.sql("select min(id) from shop having count(*) = 1")
                .query(Long.class)
                .optional();
    }
}
