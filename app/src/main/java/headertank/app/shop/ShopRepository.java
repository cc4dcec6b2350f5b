package headertank.app.shop;

import jakarta.persistence.LockModeType;
import java.util.Optional;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface ShopRepository extends Repository<ShopRow, Long> {

    ShopRow saveAndFlush(ShopRow shop);

    Optional<ShopRow> findById(long id);

    /** Holds the shop's row until the end of the transaction. */
    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select s from ShopRow s where s.id = :id")
    Optional<ShopRow> hold(long id);

    boolean existsByInventedFalse();

    long count();
}
