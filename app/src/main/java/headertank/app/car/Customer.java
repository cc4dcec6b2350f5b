package headertank.app.car;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;

/** Whose car it is. */
@Entity
class Customer {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    private long shopId;
    private String name;
    private String phone;
    private String email;
    private String note;

    @Version
    private int version;

    protected Customer() {}

    Customer(long shopId, CustomerForm form) {
        this.shopId = shopId;
        take(form);
    }

    final void take(CustomerForm form) {
        name = form.name().strip();
        phone = form.phone().strip();
        email = form.email().strip();
        note = form.note().strip();
    }

    CustomerForm toForm() {
        return new CustomerForm(name, phone, email, note, version);
    }

    Long id() {
        return id;
    }

    String name() {
        return name;
    }

    int version() {
        return version;
    }
}
