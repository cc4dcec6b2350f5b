package headertank.app.car;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;

/** A car. What cools it stands in its revisions. */
@Entity
class Car {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    private long shopId;
    private long customerId;
    private String plate;
    private String make;
    private String model;
    private Integer modelYear;
    private String note;

    @Version
    private int version;

    protected Car() {}

    Car(long shopId, CarForm form) {
        this.shopId = shopId;
        take(form);
    }

    final void take(CarForm form) {
        customerId = form.customerId();
        plate = form.plate().strip();
        make = form.make().strip();
        model = form.model().strip();
        modelYear = form.year();
        note = form.note().strip();
    }

    CarForm toForm() {
        return new CarForm(
                customerId, "", "", plate, make, model, modelYear == null ? "" : modelYear.toString(), note, version);
    }

    Long id() {
        return id;
    }

    int version() {
        return version;
    }
}
