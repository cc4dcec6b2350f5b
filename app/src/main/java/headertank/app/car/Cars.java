package headertank.app.car;

import headertank.app.audit.AuditTrail;
import headertank.app.form.FormKeys;
import headertank.app.form.FormKeys.Sent;
import headertank.app.problem.NotFoundException;
import headertank.app.shop.CurrentUser;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Adds and changes customers and cars. A change made from an outdated form is refused, not merged. */
@Service
@Transactional
public class Cars {

    private final CarRepository cars;
    private final CustomerRepository customers;
    private final CurrentUser user;
    private final AuditTrail audit;
    private final FormKeys forms;

    Cars(CarRepository cars, CustomerRepository customers, CurrentUser user, AuditTrail audit, FormKeys forms) {
        this.cars = cars;
        this.customers = customers;
        this.user = user;
        this.audit = audit;
        this.forms = forms;
    }

    /** Returns the new car's id. A customer named in the form is added along with it. */
    public long addCar(CarForm form, UUID key) {
        return forms.once(user.shopId(), key, "car", form, () -> add(form));
    }

    /** The same, unless there is something in the way of it. */
    public <P> Sent<P> addCar(CarForm form, UUID key, Supplier<Optional<P>> inTheWay) {
        return forms.once(user.shopId(), key, "car", form, inTheWay, () -> add(form));
    }

    private long add(CarForm form) {
        CarForm complete = withCustomer(form);
        Car added = cars.save(new Car(user.shopId(), complete));
        audit.record("car.added", "car", added.id(), "");
        return added.id();
    }

    /** The same in the name of the program, for data that it brings along. */
    public long addCustomerFor(long shopId, CustomerForm form) {
        Customer added = customers.save(new Customer(shopId, form));
        audit.recordByProgram(shopId, "customer.added", "customer", added.id(), "");
        return added.id();
    }

    /** The same in the name of the program, for a customer who is there. */
    public long addCarFor(long shopId, CarForm form) {
        Car added = cars.save(new Car(shopId, form));
        audit.recordByProgram(shopId, "car.added", "car", added.id(), "");
        return added.id();
    }

    /** @throws ObjectOptimisticLockingFailureException when somebody else saved since the form was filled */
    public void changeCar(long id, CarForm form) {
        Car car = findCar(id);
        refuseOutdated(Car.class, id, car.version(), form.version());
        car.take(withCustomer(form));
        audit.record("car.changed", "car", id, "");
    }

    /** Returns the new customer's id. */
    public long addCustomer(CustomerForm form, UUID key) {
        return forms.once(user.shopId(), key, "customer", form, () -> addCustomer(form));
    }

    private long addCustomer(CustomerForm form) {
        Customer added = customers.save(new Customer(user.shopId(), form));
        audit.record("customer.added", "customer", added.id(), "");
        return added.id();
    }

    /** @throws ObjectOptimisticLockingFailureException when somebody else saved since the form was filled */
    public void changeCustomer(long id, CustomerForm form) {
        Customer customer = findCustomer(id);
        refuseOutdated(Customer.class, id, customer.version(), form.version());
        customer.take(form);
        audit.record("customer.changed", "customer", id, "");
    }

    @Transactional(readOnly = true)
    public CarForm carForm(long id) {
        return findCar(id).toForm();
    }

    @Transactional(readOnly = true)
    public CustomerForm customerForm(long id) {
        return findCustomer(id).toForm();
    }

    private CarForm withCustomer(CarForm form) {
        if (form.newCustomerName().isBlank()) {
            findCustomer(form.customerId());
            return form;
        }
        return form.withCustomer(
                addCustomer(new CustomerForm(form.newCustomerName(), form.newCustomerPhone(), "", "", null)));
    }

    private static void refuseOutdated(Class<?> type, long id, int current, Integer seen) {
        if (seen == null || seen != current) {
            throw new ObjectOptimisticLockingFailureException(type, id);
        }
    }

    private Car findCar(long id) {
        return cars.findByIdAndShopId(id, user.shopId()).orElseThrow(() -> new NotFoundException("car", id));
    }

    private Customer findCustomer(long id) {
        return customers.findByIdAndShopId(id, user.shopId()).orElseThrow(() -> new NotFoundException("customer", id));
    }
}
