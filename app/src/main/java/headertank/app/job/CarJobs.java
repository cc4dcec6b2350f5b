package headertank.app.job;

import java.util.List;
import org.springframework.stereotype.Component;

/** The jobs on a car's page. */
@Component("carJobs")
public class CarJobs {

    private static final int SHOWN = 5;

    private final Queue queue;

    CarJobs(Queue queue) {
        this.queue = queue;
    }

    /** Open ones first, then the newest. */
    public List<JobLine> newest(long carId) {
        return queue.ofCar(carId, SHOWN);
    }

    /** How dates are shown. */
    public Days days() {
        return Days.now();
    }
}
