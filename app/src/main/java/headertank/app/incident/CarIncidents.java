package headertank.app.incident;

import java.util.List;
import org.springframework.stereotype.Component;

/** The reports on a car's page. */
@Component("carIncidents")
public class CarIncidents {

    private static final int SHOWN = 5;

    private final Incidents incidents;

    CarIncidents(Incidents incidents) {
        this.incidents = incidents;
    }

    /** The newest few, newest first. */
    public List<Incident> newest(long carId) {
        return incidents.ofCar(carId, SHOWN);
    }
}
