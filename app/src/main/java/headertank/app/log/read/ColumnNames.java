package headertank.app.log.read;

import headertank.app.language.EditDistance;
import headertank.app.log.file.Heading;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** How well a heading names a quantity. */
final class ColumnNames {

    /** How a name was found. */
    enum How {
        SAME,
        PART,
        NEAR,
        NOT
    }

    /**
     * @param score 0 to 1
     * @param name of the quantity that came nearest
     */
    record Match(How how, double score, String name) {}

    private static final Match NONE = new Match(How.NOT, 0, "");

    /** Words that say nothing of the quantity. */
    private static final Set<String> FILLERS = Set.of(
            "the",
            "sensor",
            "value",
            "actual",
            "ist",
            "istwert",
            "reading",
            "channel",
            "ecu",
            "obd",
            "of",
            "raw",
            "filtered",
            "avg",
            "mean",
            "corrected",
            "1",
            "a",
            "s1",
            "bank1",
            "b1",
            "signal",
            "data",
            "position",
            "pos",
            "rate",
            "current",
            "wert",
            "stellung",
            "gps",
            "can",
            "engine",
            "motor");

    /** A name this short is only found as it is. */
    private static final int SHORT = 5;

    private static final int LONG = 9;

    /** One this short is never found as a part. */
    private static final int TINY = 2;

    private ColumnNames() {}

    static Match of(LogQuantity quantity, Heading heading) {
        Match whole = of(quantity, heading.words());
        Match bare = of(quantity, heading.name());
        return bare.score() > whole.score() ? bare : whole;
    }

    private static Match of(LogQuantity quantity, String words) {
        List<String> tokens = Arrays.asList(words.split(" "));
        Match best = NONE;
        for (String name : quantity.names()) {
            Match m = compare(words, tokens, name, quantity);
            if (m.score() > best.score()) {
                best = m;
            }
        }
        return best;
    }

    private static Match compare(String words, List<String> tokens, String name, LogQuantity quantity) {
        String joined = words.replace(" ", "");
        String plain = name.replace(" ", "");
        if (joined.equals(plain)) {
            return new Match(How.SAME, 1, name);
        }
        int distance = plain.length() < SHORT ? Integer.MAX_VALUE : EditDistance.between(joined, plain);
        if (distance <= (plain.length() >= LONG ? 2 : 1)) {
            return new Match(How.NEAR, 0.85 - 0.05 * distance, name);
        }
        Set<String> rest = new HashSet<>(tokens);
        List<String> wanted = Arrays.asList(name.split(" "));
        if (!rest.containsAll(wanted)) {
            return NONE;
        }
        rest.removeAll(wanted);
        if (plain.length() <= TINY || rest.stream().anyMatch(quantity.others()::contains)) {
            return NONE;
        }
        long strangers = rest.stream().filter(w -> !FILLERS.contains(w)).count();
        double score =
                0.95 - 0.03 * (rest.size() - strangers) - 0.12 * strangers - 0.02 * Math.max(0, 3 - wanted.size());
        return strangers > 3 || score < 0.5 ? NONE : new Match(How.PART, score, name);
    }
}
