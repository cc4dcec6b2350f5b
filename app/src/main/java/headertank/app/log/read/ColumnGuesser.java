package headertank.app.log.read;

import headertank.app.log.file.Heading;
import headertank.app.log.file.LogHead;
import headertank.app.log.read.ColumnGuess.Reason;
import headertank.app.log.read.ColumnGuess.Why;
import headertank.app.unit.Dimension;
import headertank.app.unit.Scaling;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Guesses what columns are: by name, by unit, and by whether the values are some that a car gives. The weights are modelling
 * choices; they order guesses, they are no probabilities.
 */
final class ColumnGuesser {

    private static final double LEAST = 0.25;

    /** Units that devices write without saying so, the most usual first. */
    private static final Map<Dimension, List<String>> UNNAMED = Map.ofEntries(
            Map.entry(Dimension.TEMPERATURE, List.of("°C", "°F", "K")),
            Map.entry(Dimension.SPEED, List.of("km/h", "mph", "m/s")),
            Map.entry(Dimension.ROTATION, List.of("rpm")),
            Map.entry(Dimension.PRESSURE_ABSOLUTE, List.of("kPa", "bar", "mbar", "psi", "Pa")),
            Map.entry(Dimension.PRESSURE_GAUGE, List.of("bar", "psi", "kPa", "mbar")),
            Map.entry(Dimension.VOLTAGE, List.of("V", "mV")),
            Map.entry(Dimension.CURRENT, List.of("A")),
            Map.entry(Dimension.MASS_FLOW, List.of("g/s", "kg/h", "lb/min", "kg/s")),
            Map.entry(Dimension.ANGLE, List.of("°", "rad")),
            Map.entry(Dimension.RATIO, List.of("")));

    private static final Set<String> AMERICAN = Set.of("°F", "mph", "psi", "lb/min");

    /** What a unit alone may tell, and how much that is worth. */
    private static final Map<LogQuantity, Double> BY_UNIT_ALONE = Map.of(
            LogQuantity.ENGINE_SPEED,
            0.5,
            LogQuantity.ROAD_SPEED,
            0.5,
            LogQuantity.VOLTAGE,
            0.4,
            LogQuantity.COOLANT,
            0.35);

    /** A coolant passes these on its way from cold to hot [K]. */
    private static final double WARM_K = 333;

    private static final double LEAST_RISE_K = 10;

    private ColumnGuesser() {}

    static List<ColumnGuess> guesses(LogHead head, List<ColumnTally> tallies) {
        boolean american = isAmerican(head);
        List<ColumnGuess> all = new ArrayList<>();
        for (ColumnTally tally : tallies) {
            if (tally.readings() > 0
                    && !tally.isText()
                    && !Positions.isPosition(head.headings().get(tally.column()))) {
                for (LogQuantity q : LogQuantity.values()) {
                    guess(q, head.headings().get(tally.column()), tally, american)
                            .ifPresent(all::add);
                }
            }
        }
        all.sort(Comparator.comparingDouble(ColumnGuess::sureness).reversed());
        Set<LogQuantity> found = EnumSet.noneOf(LogQuantity.class);
        Set<Integer> taken = new HashSet<>();
        List<ColumnGuess> chosen = new ArrayList<>();
        for (ColumnGuess g : all) {
            if (!found.contains(g.quantity()) && !taken.contains(g.column())) {
                found.add(g.quantity());
                taken.add(g.column());
                chosen.add(g);
            }
        }
        chosen.sort(Comparator.comparing(ColumnGuess::quantity));
        return chosen;
    }

    private static boolean isAmerican(LogHead head) {
        int american = 0;
        for (Heading h : head.headings()) {
            for (Dimension d : List.of(Dimension.TEMPERATURE, Dimension.SPEED, Dimension.PRESSURE_ABSOLUTE)) {
                Optional<Scaling> unit = Scaling.find(h.unit(), d);
                if (unit.isPresent()) {
                    american += AMERICAN.contains(unit.get().symbol()) ? 1 : -1;
                }
            }
        }
        return american > 0;
    }

    private static Optional<ColumnGuess> guess(LogQuantity q, Heading h, ColumnTally tally, boolean american) {
        ColumnNames.Match name = ColumnNames.of(q, h);
        List<Reason> why = new ArrayList<>();
        Optional<Scaling> written = Scaling.find(h.unit(), q.dimension());
        double score = name.score();
        if (name.how() == ColumnNames.How.NOT) {
            boolean fits = written.isPresent() && BY_UNIT_ALONE.containsKey(q) && fits(q, written.get(), tally);
            if (!fits) {
                return Optional.empty();
            }
            score = BY_UNIT_ALONE.get(q);
            why.add(new Reason(Why.NO_NAME, ""));
        } else {
            why.add(new Reason(
                    switch (name.how()) {
                        case SAME -> Why.NAME_SAME;
                        case PART -> Why.NAME_PART;
                        default -> Why.NAME_NEAR;
                    },
                    name.name()));
        }
        if (written.isEmpty() && !h.unit().isEmpty()) {
            return Optional.empty();
        }
        Unit unit = written.map(u -> named(u, h)).orElseGet(() -> unnamed(q, tally, american));
        why.add(new Reason(unit.why(), unit.scaling().symbol()));
        score *= unit.factor();
        score *= plausible(q, unit.scaling(), tally, why);
        return score < LEAST
                ? Optional.empty()
                : Optional.of(new ColumnGuess(q, tally.column(), unit.scaling(), score, why));
    }

    private record Unit(Scaling scaling, Why why, double factor) {}

    private static Unit named(Scaling unit, Heading h) {
        return switch (h.from()) {
            case ROW -> new Unit(unit, Why.UNIT_ROW, 1);
            case CELL -> new Unit(unit, Why.UNIT_CELL, 1);
            default -> new Unit(unit, Why.UNIT_HEADING, 1);
        };
    }

    private static Unit unnamed(LogQuantity q, ColumnTally tally, boolean american) {
        if (q.dimension() == Dimension.FRACTION) {
            return share(q, tally);
        }
        List<String> symbols = q == LogQuantity.YAW_RATE ? List.of("°/s", "rad/s") : UNNAMED.get(q.dimension());
        Stream<String> ordered = american
                ? Stream.concat(
                        symbols.stream().filter(AMERICAN::contains),
                        symbols.stream().filter(s -> !AMERICAN.contains(s)))
                : symbols.stream();
        List<Scaling> units = ordered.map(s -> bySymbol(s, q.dimension())).toList();
        List<Scaling> fitting = units.stream().filter(u -> inside(q, u, tally)).toList();
        if (fitting.isEmpty()) {
            return new Unit(units.get(0), Why.UNIT_ASSUMED, 0.8);
        }
        return fitting.size() == 1
                ? new Unit(fitting.get(0), Why.UNIT_VALUES, 0.95)
                : new Unit(fitting.get(0), Why.UNIT_ASSUMED, 0.85);
    }

    /** A share of one, of a hundred or of 255, by the greatest value. */
    private static Unit share(LogQuantity q, ColumnTally tally) {
        double ofOne = q == LogQuantity.LOAD ? 3 : 1.05;
        double ofHundred = q == LogQuantity.LOAD && !tally.isWhole() ? 300 : 110;
        double most = tally.greatest();
        if (most <= ofOne && (most > 0 || q == LogQuantity.FAN)) {
            boolean sure = !tally.isWhole() || q == LogQuantity.FAN;
            return new Unit(bySymbol("of 1", q.dimension()), Why.UNIT_VALUES, sure ? 0.95 : 0.8);
        }
        if (most <= ofHundred) {
            boolean sure = most > 2 && !tally.isWhole();
            return new Unit(
                    bySymbol("%", q.dimension()), sure ? Why.UNIT_VALUES : Why.UNIT_ASSUMED, sure ? 0.95 : 0.85);
        }
        return most <= 255
                ? new Unit(bySymbol("of 255", q.dimension()), Why.UNIT_VALUES, 0.9)
                : new Unit(bySymbol("%", q.dimension()), Why.UNIT_ASSUMED, 0.6);
    }

    private static Scaling bySymbol(String symbol, Dimension dimension) {
        return Scaling.of(dimension).stream()
                .filter(s -> s.symbol().equals(symbol))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(symbol));
    }

    private static boolean inside(LogQuantity q, Scaling unit, ColumnTally tally) {
        return q.usual().contains(unit.toSi(tally.least())) && q.usual().contains(unit.toSi(tally.greatest()));
    }

    /** Whether values are such that the unit alone tells the quantity. */
    private static boolean fits(LogQuantity q, Scaling unit, ColumnTally tally) {
        double low = unit.toSi(tally.least());
        double high = unit.toSi(tally.greatest());
        boolean rises = q != LogQuantity.COOLANT || high > WARM_K && high - low > LEAST_RISE_K;
        return rises && inside(q, unit, tally) && tally.usualSlope() * unit.factor() <= q.fastestPerS();
    }

    /** Between 0 and 1; adds what is odd about the values. */
    private static double plausible(LogQuantity q, Scaling unit, ColumnTally tally, List<Reason> why) {
        double factor = 1;
        if (!inside(q, unit, tally)) {
            why.add(new Reason(Why.RANGE_ODD, ""));
            boolean none = unit.toSi(tally.greatest()) < q.usual().min()
                    || unit.toSi(tally.least()) > q.usual().max();
            factor *= none ? 0.3 : 0.75;
        }
        if (tally.usualSlope() * unit.factor() > q.fastestPerS()) {
            why.add(new Reason(Why.RATE_ODD, ""));
            factor *= 0.7;
        }
        if (tally.stands()) {
            why.add(new Reason(Why.STANDS, ""));
        }
        return factor;
    }
}
