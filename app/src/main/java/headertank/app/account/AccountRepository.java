package headertank.app.account;

import java.util.List;
import java.util.Optional;
import org.springframework.data.repository.Repository;

interface AccountRepository extends Repository<Account, Long> {
    Account save(Account account);

    Optional<Account> findByLogin(String login);

    Optional<Account> findByIdAndShopId(long id, long shopId);

    List<Account> findByShopIdOrderByName(long shopId);

    boolean existsByLogin(String login);

    long count();
}
