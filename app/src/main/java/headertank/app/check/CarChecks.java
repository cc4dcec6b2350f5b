package headertank.app.check;

import headertank.app.check.stored.CheckLine;
import java.util.List;
import org.springframework.stereotype.Component;

/** The checks on a car's page. */
@Component("carChecks")
public class CarChecks {

    private static final int SHOWN = 5;

    private final Checks checks;

    CarChecks(Checks checks) {
        this.checks = checks;
    }

    /** The newest few, newest first. */
    public List<CheckLine> newest(long carId) {
        return checks.ofCar(carId, SHOWN);
    }
}
