package headertank.app.demo;

import headertank.app.carspec.Revision;
import headertank.app.carspec.Revisions;
import headertank.app.carspec.Spec;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Gives the invented cars their specs; a car that has one already is left alone. */
@Component
@ConditionalOnProperty("headertank.demo")
class DemoRevisions {

    /** The car that left the shop, was changed, and has not been rated again: days since each of its revisions. */
    private static final Map<String, List<Integer>> DAYS_AGO = Map.of("DEMO 02", List.of(75, 40));

    private final JdbcClient jdbc;
    private final Revisions revisions;
    private final DemoCatalogue catalogue;
    private final DemoWork work;

    DemoRevisions(JdbcClient jdbc, Revisions revisions, DemoCatalogue catalogue, DemoWork work) {
        this.jdbc = jdbc;
        this.revisions = revisions;
        this.catalogue = catalogue;
        this.work = work;
    }

    private record Place(long shop, long author, long car) {}

    @Transactional
    public void ensure() {
        catalogue.ensure();
        DemoSpecs.ALL.forEach((plate, steps) -> bare(plate).ifPresent(place -> add(place, plate, steps)));
    }

    /** The invented car with this plate, if nobody has said anything of its cooling yet. */
    private Optional<Place> bare(String plate) {
        return jdbc.sql("""
                        select c.shop_id, a.id as author, c.id as car
                        from car c join shop s on s.id = c.shop_id and s.invented
                             join account a on a.shop_id = s.id and a.login = :author
                        where c.plate = :plate and not exists (select 1 from revision r where r.car_id = c.id)
                        order by c.id limit 1""")
                .param("author", DemoShop.LOGINS.get(0).login())
                .param("plate", plate)
                .query((row, n) -> new Place(row.getLong("shop_id"), row.getLong("author"), row.getLong("car")))
                .optional();
    }

    private void add(Place place, String plate, List<DemoSpecs.Step> steps) {
        Integer parent = null;
        List<Integer> daysAgo = DAYS_AGO.getOrDefault(plate, List.of());
        for (int i = 0; i < steps.size(); i++) {
            DemoSpecs.Step step = steps.get(i);
            Spec spec = step.spec().withParts(catalogue.refs(place.shop(), DemoParts.on(plate, i)));
            work.daysAgo(daysAgo.isEmpty() ? 0 : daysAgo.get(i));
            Revision saved = revisions.saveFor(
                    place.shop(), place.author(), place.car(), parent, spec, step.reason(), UUID.randomUUID());
            parent = saved.number();
            if (i + 1 < daysAgo.size()) {
                work.daysAgo(daysAgo.get(i) - 1);
                work.letLeave(place.car(), saved.number());
            }
        }
        work.daysAgo(0);
    }
}
