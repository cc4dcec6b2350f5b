package headertank.app.language;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.app.MessageSources;
import headertank.app.RandomEntries;
import headertank.calc.Rater;
import headertank.calc.Rating;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.duty.Duty;
import headertank.calc.quantity.Chosen;
import headertank.calc.quantity.Entry;
import headertank.calc.quantity.Provenance;
import headertank.calc.quantity.Stated;
import headertank.calc.risk.Flag;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** What calc-core says is found in the catalogue, whatever car it speaks about. */
class CalcWordsTest {

    private static final int CARS = 60;

    private final CalcWords words = new CalcWords(MessageSources.all());
    private final Rater rater = Rater.standard();

    @Test
    void everyTextOfARatingIsInTheCatalogue() {
        var unknown = new TreeSet<String>();
        Random random = new Random(20261125);
        int rated = 0;
        while (rated < CARS) {
            Build build = new Build(
                    CarClass.values()[rated % CarClass.values().length], RandomEntries.fitting(drawn(random)));
            List<Duty> duties = new ArrayList<>(rater.duties().values());
            for (String text : said(rater.rate(build, duties, rated < 3 ? 4 : 0))) {
                if (!text.isEmpty() && !words.knows(text)) {
                    unknown.add(text);
                }
            }
            rated++;
        }
        assertThat(unknown).isEmpty();
    }

    /** A quarter of the fields stated, anywhere in their range. */
    private static Map<BuildField, Entry> drawn(Random random) {
        Map<BuildField, Entry> entries = new EnumMap<>(BuildField.class);
        for (BuildField f : BuildField.values()) {
            if (f == BuildField.CORE_CLASS || random.nextInt(4) > 0) {
                continue;
            }
            if (f.isChoice()) {
                entries.put(
                        f, new Chosen(f.options().get(random.nextInt(f.options().size())), Provenance.MEASURED));
            } else {
                double span = f.allowed().max() - f.allowed().min();
                entries.put(f, Stated.advertised(f.allowed().min() + random.nextDouble() * span));
            }
        }
        return entries;
    }

    private List<String> said(Rating rating) {
        List<String> said = new ArrayList<>();
        for (Flag f : rating.flags()) {
            said.addAll(List.of(f.title(), f.reason(), f.advice(), f.tradeSays(), f.caution()));
            f.consequences().forEach(c -> said.add(c.what()));
        }
        rating.improvements().forEach(i -> said.add(i.label()));
        rating.assumptions().forEach(a -> said.add(a.why()));
        rating.notes().forEach(n -> said.add(n.why()));
        rating.duties().forEach(d -> {
            said.add(d.duty().label());
            d.duty().points().forEach(p -> said.add(p.label()));
            d.findings().stream()
                    .filter(f -> !f.code().name().equals("RISK_FLAG"))
                    .forEach(f -> said.add(f.doThis()));
            d.outcome().points().forEach(p -> rater.working(
                            rating.build(), d.duty(), p.point().id())
                    .forEach(s -> {
                        said.add(s.title());
                        s.lines().forEach(l -> said.add(l.quantity()));
                    }));
        });
        return said;
    }

    @Test
    void aTextWithFiguresKeepsThem() {
        assertThat(words.of(
                        "12.5 kW reach the coolant and even at 260 C the radiator would give off 3.1 kW less: there is no steady state.",
                        Locale.GERMAN))
                .contains("12,5 kW", "3,1 kW", "Dauerzustand");
    }

    @Test
    void whatNobodyTranslatedIsShownAsItIs() {
        assertThat(words.of("A rule of the house.", Locale.GERMAN)).isEqualTo("A rule of the house.");
    }
}
