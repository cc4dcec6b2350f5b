package headertank.app.print;

import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;

/** Where this program is reached from a phone in the workshop: as set, or as the request that asks has reached it. */
@Component
class PublicAddress {

    private final String set;

    PublicAddress(@Value("${headertank.public-url:}") String set) {
        this.set = set.strip();
    }

    /** The whole address of a car's page. Without a setting only within a request. */
    String ofCar(long carId) {
        String root = set.isEmpty()
                ? ServletUriComponentsBuilder.fromCurrentContextPath().build().toUriString()
                : set;
        return (root.endsWith("/") ? root.substring(0, root.length() - 1) : root) + "/cars/" + carId;
    }
}
