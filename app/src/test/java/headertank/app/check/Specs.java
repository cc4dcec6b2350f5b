package headertank.app.check;

import headertank.app.car.CarForm;
import headertank.app.car.Cars;
import headertank.app.carspec.Revision;
import headertank.app.carspec.Revisions;
import headertank.app.carspec.Spec;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.quantity.Physics;
import headertank.calc.quantity.Stated;
import java.util.List;
import java.util.UUID;
import org.springframework.stereotype.Component;

/** Cars with a cooling spec for tests; whoever is signed in saves them. */
@Component
public class Specs {

    private final Cars cars;
    private final Revisions revisions;

    Specs(Cars cars, Revisions revisions) {
        this.cars = cars;
        this.revisions = revisions;
    }

    /** A car that holds easily on the street. */
    public static Build.Builder easy() {
        return Build.forCar(CarClass.MODERN_STREET)
                .set(BuildField.ENGINE_POWER, Stated.measured(70e3))
                .set(BuildField.CORE_WIDTH, Stated.measured(0.65))
                .set(BuildField.CORE_HEIGHT, Stated.measured(0.42))
                .set(BuildField.CORE_DEPTH, Stated.measured(0.036))
                .set(BuildField.FAN_FLOW, Stated.measured(0.9))
                .set(BuildField.FAN_COUNT, Stated.measured(2))
                .set(BuildField.FAN_CURRENT, Stated.measured(10))
                .set(BuildField.FAN_START_CURRENT, Stated.measured(14))
                .set(BuildField.FAN_COVER, Stated.measured(0.95))
                .set(BuildField.ALTERNATOR, Stated.measured(140))
                .set(BuildField.CAP_PRESSURE, Stated.measured(1.3e5))
                .set(BuildField.AMBIENT, Stated.measured(Physics.kelvin(30)));
    }

    /** A car without any revision. */
    public long aCar() {
        return cars.addCar(
                new CarForm(
                        null,
                        "Jo Example",
                        "000 555 0199",
                        "T " + UUID.randomUUID().toString().substring(0, 8),
                        "Nimbrax",
                        "Coupe",
                        "1999",
                        "",
                        null),
                null);
    }

    /** Saves the next revision of a car. */
    public Revision save(long car, Build build, String... duties) {
        Integer parent = revisions.latest(car).map(Revision::number).orElse(null);
        return revisions.save(car, parent, new Spec(build, List.of(duties)), "test", UUID.randomUUID());
    }
}
