package headertank.app.demo;

import headertank.app.carlog.CarLogs;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.core.io.ClassPathResource;
import org.springframework.stereotype.Component;

/** A log of the invented drift car, as its second revision describes it: written once by the program's own model. */
@Component
@ConditionalOnProperty("headertank.demo")
class DemoLogs {

    private static final String LOGGED = "DEMO 02";
    private static final double THAT_DAY_K = 298.15;

    private final CarLogs logs;
    private final DemoSight there;

    DemoLogs(CarLogs logs, DemoSight there) {
        this.logs = logs;
        this.there = there;
    }

    /** Keeps it where it is not kept yet. */
    public void ensure() {
        there.car(LOGGED).filter(c -> there.hasSpec(c.car())).ifPresent(c -> {
            try {
                logs.keepFor(c.shop(), c.desk(), c.car(), "Drift day (invented)", text(), THAT_DAY_K, "drift");
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }

    private static String text() throws IOException {
        return new ClassPathResource("demo/drift-log.csv").getContentAsString(StandardCharsets.UTF_8);
    }
}
