package headertank.app.demo;

import headertank.app.carspec.Revisions;
import headertank.app.carspec.Spec;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Gives the invented cars their specs; a car that has one already is left alone. */
@Component
@ConditionalOnProperty("headertank.demo")
class DemoRevisions {

    /** The car that left the shop, was changed, and has not been rated again: days since each of its revisions. */
    private static final Map<String, List<Integer>> DAYS_AGO = Map.of("DEMO 02", List.of(75, 40));

    private final DemoSight there;
    private final Revisions revisions;
    private final DemoCatalogue catalogue;
    private final DemoWork work;
    private final DemoPast past;

    DemoRevisions(DemoSight there, Revisions revisions, DemoCatalogue catalogue, DemoWork work, DemoPast past) {
        this.there = there;
        this.revisions = revisions;
        this.catalogue = catalogue;
        this.work = work;
        this.past = past;
    }

    @Transactional
    public void ensure() {
        catalogue.ensure();
        DemoSpecs.ALL.forEach((plate, steps) -> there.car(plate)
                .filter(place -> !there.hasSpec(place.car()))
                .ifPresent(place -> add(place, plate, steps)));
    }

    private void add(DemoSight.SeenCar place, String plate, List<DemoSpecs.Step> steps) {
        List<Integer> daysAgo = DAYS_AGO.getOrDefault(plate, List.of());
        for (int i = 0; i < steps.size(); i++) {
            int revision = i + 1;
            DemoSpecs.Step step = steps.get(i);
            if (i >= daysAgo.size()) {
                save(place, plate, step, revision);
            } else {
                past.daysAgo(daysAgo.get(i), () -> save(place, plate, step, revision));
            }
            if (i + 1 < daysAgo.size()) {
                past.daysAgo(daysAgo.get(i) - 1, () -> work.letLeave(place.car(), revision));
            }
        }
    }

    private void save(DemoSight.SeenCar place, String plate, DemoSpecs.Step step, int number) {
        Spec spec = step.spec().withParts(catalogue.refs(place.shop(), DemoParts.on(plate, number - 1)));
        Integer parent = number == 1 ? null : number - 1;
        revisions.saveFor(place.shop(), place.desk(), place.car(), parent, spec, step.reason(), UUID.randomUUID());
    }
}
