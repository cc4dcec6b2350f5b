package headertank.app.demo;

import headertank.app.spec.Revision;
import headertank.app.spec.Revisions;
import headertank.app.spec.Spec;
import java.util.List;
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

    private final JdbcClient jdbc;
    private final Revisions revisions;
    private final DemoCatalogue catalogue;

    DemoRevisions(JdbcClient jdbc, Revisions revisions, DemoCatalogue catalogue) {
        this.jdbc = jdbc;
        this.revisions = revisions;
        this.catalogue = catalogue;
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
        for (int i = 0; i < steps.size(); i++) {
            DemoSpecs.Step step = steps.get(i);
            Spec spec = step.spec().withParts(catalogue.refs(place.shop(), DemoParts.on(plate, i)));
            Revision saved = revisions.saveFor(
                    place.shop(), place.author(), place.car(), parent, spec, step.reason(), UUID.randomUUID());
            parent = saved.number();
        }
    }
}
