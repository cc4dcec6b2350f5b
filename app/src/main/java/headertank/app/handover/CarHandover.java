package headertank.app.handover;

import java.util.Optional;
import org.springframework.stereotype.Component;

/** How handing over stands, on a car's page. */
@Component("carHandover")
public class CarHandover {

    private final Handovers handovers;

    CarHandover(Handovers handovers) {
        this.handovers = handovers;
    }

    public Optional<Handover> newest(long carId) {
        return handovers.newestOfCar(carId);
    }
}
