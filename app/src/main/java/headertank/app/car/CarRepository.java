package headertank.app.car;

import java.util.Optional;
import org.springframework.data.repository.Repository;

interface CarRepository extends Repository<Car, Long> {
    Car save(Car car);

    Optional<Car> findByIdAndShopId(long id, long shopId);
}
