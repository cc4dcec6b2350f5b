package headertank.app.car.intake;

import headertank.app.car.CarForm;
import headertank.app.car.CarLine;
import headertank.app.car.CarSearch;
import headertank.app.car.CustomerLine;
import java.util.List;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;

/** Warns before the same car or the same customer is added a second time. */
@Component
class LookAlikes {

    /**
     * What is there already.
     *
     * @param cars with the same plate, however it is spaced
     * @param people with the same phone number
     */
    record Found(List<CarLine> cars, List<CustomerLine> people) {

        static final Found NOTHING = new Found(List.of(), List.of());

        /** Whether there is more than what was warned of before. */
        boolean isMoreThan(String warned) {
            return !List.of(warned.split("-")).containsAll(tokens());
        }

        /** Stands for exactly these, so that a warning is given once, and anew when something else is alike. */
        public String sign() {
            return String.join("-", tokens());
        }

        private List<String> tokens() {
            return Stream.concat(
                            cars.stream().map(c -> "c" + c.id()),
                            people.stream().map(p -> "p" + p.id()))
                    .toList();
        }
    }

    private final CarSearch search;

    LookAlikes(CarSearch search) {
        this.search = search;
    }

    Found of(CarForm form) {
        boolean newPerson = form.customerId() == null;
        return new Found(
                search.withPlate(form.plate()),
                newPerson ? search.withPhone(form.newCustomerPhone()) : List.<CustomerLine>of());
    }
}
