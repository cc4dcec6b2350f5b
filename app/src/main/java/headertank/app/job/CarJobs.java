package headertank.app.job;

import headertank.app.shop.ShopTime;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** The jobs on a car's page. */
@Component("carJobs")
public class CarJobs {

    private static final int SHOWN = 5;

    private final Queue queue;
    private final ShopTime time;

    CarJobs(Queue queue, ShopTime time) {
        this.time = time;
        this.queue = queue;
    }

    /** Open ones first, then the newest. */
    public List<JobLine> newest(long carId) {
        return queue.ofCar(carId, SHOWN);
    }

    /** The job that is being worked on. */
    public Optional<JobLine> open(long carId) {
        return queue.ofCar(carId, 1).stream().filter(j -> !j.stage().isClosed()).findFirst();
    }

    /** How dates are shown. */
    public Days days() {
        return Days.at(time);
    }
}
