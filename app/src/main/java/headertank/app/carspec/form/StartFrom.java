package headertank.app.carspec.form;

import headertank.app.car.CarLine;
import headertank.app.car.CarSearch;
import headertank.app.carspec.Revision;
import headertank.app.carspec.Revisions;
import headertank.app.carspec.Spec;
import headertank.app.field.FieldText;
import headertank.app.problem.NotFoundException;
import headertank.app.shop.CurrentUser;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.quantity.Chosen;
import headertank.calc.quantity.Entry;
import headertank.calc.quantity.Provenance;
import headertank.calc.quantity.Stated;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/**
 * Starts a car's form from another car of the shop. What is taken over was seen on the other car only, so it counts as
 * guessed; nothing of the other car's owner comes along.
 */
@Component
@Transactional(readOnly = true)
class StartFrom {

    static final int FEW = 4;
    static final int MANY = 20;

    /**
     * A car to start from.
     *
     * @param revision number of its newest revision
     * @param stated how many fields that states
     */
    record Line(long carId, String plate, String title, int revision, String carClass, long stated) {}

    /** @param source which car the values come from, without its plate: this goes into a history that is kept */
    record Start(SpecForm form, String source, int taken) {}

    private static final String ALIKE = """
            select c.id, c.plate, c.make, c.model, c.model_year, r.number, r.spec ->> 'carClass' as car_class,
                   (select count(*) from jsonb_object_keys(r.spec -> 'fields')) as stated
            from car c join lateral (select * from revision v where v.shop_id = c.shop_id and v.car_id = c.id
                                     order by v.number desc limit 1) r on true
                 join car me on me.id = :me and me.shop_id = c.shop_id
            where c.shop_id = :shop and c.id <> me.id
              and (:text = '' or c.plate_key like :plate
                   or fits(:text, concat_ws(' ', c.plate, c.make, c.model, r.spec ->> 'carClass')))
            order by me.make <> '' and lower(c.make) = lower(me.make) and lower(c.model) = lower(me.model) desc,
                     me.make <> '' and lower(c.make) = lower(me.make) desc,
                     r.spec ->> 'carClass' = coalesce((select m.spec ->> 'carClass' from revision m where m.car_id = me.id
                                                       order by m.number desc limit 1), '') desc,
                     abs(coalesce(c.model_year, 0) - coalesce(me.model_year, 0)), r.saved_at desc, c.id
            limit :most""";

    private final JdbcClient jdbc;
    private final CurrentUser user;
    private final CarSearch cars;
    private final Revisions revisions;
    private final FieldText text;

    StartFrom(JdbcClient jdbc, CurrentUser user, CarSearch cars, Revisions revisions, FieldText text) {
        this.jdbc = jdbc;
        this.user = user;
        this.cars = cars;
        this.revisions = revisions;
        this.text = text;
    }

    /** Cars of the shop that have a spec, most alike first: same make and model, same make, same class, near in year. */
    List<Line> alike(long carId, String search, int most) {
        String asked = search.strip();
        String plain = asked.replace("\\", "\\\\").replace("%", "\\%").replace("_", "\\_");
        return jdbc.sql(ALIKE)
                .param("shop", user.shopId())
                .param("me", carId)
                .param("text", asked)
                .param("plate", "%" + plain.replaceAll("[\\s.·-]", "").toUpperCase(Locale.ROOT) + "%")
                .param("most", most)
                .query(this::line)
                .list();
    }

    /** @throws NotFoundException when the shop has no such car, or nothing is known of it */
    Start from(long otherCar, Optional<Integer> parent) {
        CarLine other = cars.car(otherCar);
        Revision revision =
                revisions.latest(otherCar).orElseThrow(() -> new NotFoundException("revision of car", otherCar));
        Spec taken = guessed(revision.spec());
        String source = source(other, revision);
        String reason = text.message("spec.start.reason", source, source);
        return new Start(
                SpecForm.of(taken, reason, parent.orElse(null), text),
                source,
                taken.build().entries().size());
    }

    private String source(CarLine car, Revision revision) {
        String number = Long.toString(car.id());
        return text.message("spec.start.source", number, car.title(), number, revision.number())
                .strip();
    }

    /** The same values, none of them vouched for. */
    static Spec guessed(Spec spec) {
        Map<BuildField, Entry> entries = new EnumMap<>(BuildField.class);
        spec.build().entries().forEach((field, entry) -> entries.put(field, guessed(entry)));
        return new Spec(new Build(spec.build().carClass(), entries), spec.dutyIds(), spec.typed());
    }

    private static Entry guessed(Entry entry) {
        return entry instanceof Chosen chosen
                ? new Chosen(chosen.token(), Provenance.GUESSED)
                : new Stated(((Stated) entry).si(), Provenance.GUESSED, null);
    }

    private Line line(ResultSet row, int n) throws SQLException {
        Integer year = row.getObject("model_year", Integer.class);
        String title =
                (row.getString("make") + " " + row.getString("model") + (year == null ? "" : " " + year)).strip();
        return new Line(
                row.getLong("id"),
                row.getString("plate"),
                title,
                row.getInt("number"),
                text.carClass(CarClass.valueOf(row.getString("car_class"))),
                row.getLong("stated"));
    }
}
