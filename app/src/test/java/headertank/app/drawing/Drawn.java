package headertank.app.drawing;

import headertank.app.RandomEntries;
import headertank.app.check.snapshot.Snapshot;
import headertank.app.check.stored.CheckInput;
import headertank.app.check.stored.CheckResult;
import headertank.app.check.stored.DutyResult;
import headertank.app.unit.UnitSystem;
import headertank.calc.Rater;
import headertank.calc.Rating;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.quantity.Chosen;
import headertank.calc.quantity.Entry;
import headertank.calc.quantity.FigureKind;
import headertank.calc.quantity.Provenance;
import headertank.calc.quantity.Stated;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.springframework.context.MessageSource;
import org.springframework.context.support.ResourceBundleMessageSource;

/** Drawings of cars for tests, without a database. */
final class Drawn {

    static final Rater RATER = Rater.standard();

    private Drawn() {}

    static Words words(UnitSystem system) {
        return new Words(messages(), system, Locale.ENGLISH);
    }

    private static MessageSource messages() {
        ResourceBundleMessageSource source = new ResourceBundleMessageSource();
        source.setBasename("messages/drawing");
        source.setDefaultEncoding("UTF-8");
        source.setAlwaysUseMessageFormat(true);
        return source;
    }

    /** A car at the deciding point of a duty. */
    static CheckDrawing of(Build build, String duty, UnitSystem system) {
        Rating rating = RATER.preview(build, List.of(RATER.duties().get(duty)));
        CheckInput input = Snapshot.input(rating, 1, 1);
        CheckResult result = Snapshot.result(rating, RATER);
        DutyResult rated = result.duties().get(0);
        return Drawings.draw(1, input, result, rated, rated.deciding(), words(system), RATER);
    }

    /** Any class, each field stated with a chance of one half, numbers anywhere in their range. */
    static Build random(long seed) {
        Random random = new Random(seed);
        CarClass[] classes = CarClass.values();
        CarClass carClass = classes[random.nextInt(classes.length)];
        Map<BuildField, Entry> entries = new EnumMap<>(BuildField.class);
        for (BuildField f : BuildField.values()) {
            boolean stated = random.nextBoolean();
            double share = random.nextDouble();
            Provenance from = Provenance.values()[random.nextInt(4)];
            if (!stated || f == BuildField.CORE_CLASS) {
                continue;
            }
            if (f.isChoice()) {
                entries.put(
                        f, new Chosen(f.options().get((int) (share * f.options().size())), from));
            } else {
                double si = f.allowed().min()
                        + share * (f.allowed().max() - f.allowed().min());
                entries.put(f, new Stated(f.kind() == FigureKind.COUNT ? Math.rint(si) : si, from, null));
            }
        }
        return new Build(carClass, RandomEntries.fitting(entries));
    }
}
