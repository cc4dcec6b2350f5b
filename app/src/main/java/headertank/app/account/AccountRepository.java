package headertank.app.account;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface AccountRepository extends Repository<Account, Long> {
    Account save(Account account);

    Optional<Account> findByLogin(String login);

    Optional<Account> findByIdAndShopId(long id, long shopId);

    List<Account> findByShopIdOrderByName(long shopId);

    boolean existsByLogin(String login);

    long count();

    @Modifying
    @Query("update Account a set a.lastSignInAt = :at where a.id = :id")
    void signedIn(long id, Instant at);

    @Modifying
    @Query(value = "update account set password_used_at = :at where id = :id and password_once", nativeQuery = true)
    void spend(long id, Instant at);

    @Modifying
    @Query("update Account a set a.language = :language where a.id = :id")
    void choose(long id, String language);

    /** Until the end of the transaction, whoever else founds a shop waits. */
    @Query(value = "select cast(pg_advisory_xact_lock(hashtext('headertank.first-owner')) as text)", nativeQuery = true)
    String foundOneAtATime();
}
