package headertank.app.job;

import java.time.Instant;
import java.util.Optional;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface JobRepository extends Repository<JobRow, Long> {
    JobRow saveAndFlush(JobRow job);

    Optional<JobRow> findByIdAndShopId(long id, long shopId);

    /** The clock of the database, which goes on within a transaction. */
    @Query("select cast(function('clock_timestamp') as Instant) from JobRow j where j.id = :id")
    Instant now(long id);
}
