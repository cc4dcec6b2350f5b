package headertank.app.part;

import java.util.Optional;
import org.springframework.data.repository.Repository;

interface PartRepository extends Repository<Part, Long> {
    Part save(Part part);

    Part saveAndFlush(Part part);

    Optional<Part> findByIdAndShopId(long id, long shopId);
}
