package headertank.app.car;

import java.util.Optional;
import org.springframework.data.repository.Repository;

interface CustomerRepository extends Repository<Customer, Long> {
    Customer save(Customer customer);

    Optional<Customer> findByIdAndShopId(long id, long shopId);
}
