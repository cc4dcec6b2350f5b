package headertank.app.demo;

import headertank.app.job.Jobs;
import headertank.app.shop.TimeZones;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Gives the invented shop its jobs, promised around the day of the first start; a shop that has one is left alone. */
@Component
@ConditionalOnProperty("headertank.demo")
class DemoJobs {

    private record DemoJob(String plate, int daysFromNow, String asked) {}

    private static final List<DemoJob> ALL = List.of(
            new DemoJob("DEMO 02", -2, "Runs hot since the new fans are on. Look at it before the next event."),
            new DemoJob("DEMO 05", 0, "Just bought. Will the cooling do for a track day on petrol?"),
            new DemoJob("DEMO 01", 0, "Ready for the track day. Go through the check list and hand it over."),
            new DemoJob("DEMO 03", 1, "Tows in the mountains next month: clean or change the radiator?"),
            new DemoJob("DEMO 06", 5, "Thermostat back in, and say whether the clutch fan is enough."),
            new DemoJob("DEMO 04", 9, "First visit: write down what is fitted, then rate it for the street."));

    private final DemoSight there;
    private final Jobs jobs;

    DemoJobs(DemoSight there, Jobs jobs) {
        this.there = there;
        this.jobs = jobs;
    }

    @Transactional
    public void ensure() {
        if (!there.anyJob()) {
            ALL.forEach(this::add);
        }
    }

    private void add(DemoJob job) {
        LocalDate promised = LocalDate.now(ZoneId.of(TimeZones.USUAL)).plusDays(job.daysFromNow());
        there.car(job.plate()).ifPresent(c -> jobs.openFor(c.shop(), c.desk(), c.car(), job.asked(), promised));
    }
}
