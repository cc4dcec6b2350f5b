package headertank.app.evidence;

import headertank.app.field.FieldFormat;
import headertank.app.field.FieldValues;
import headertank.app.stored.CanonicalJson;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.CarClass;
import headertank.calc.carspec.FieldGroup;
import headertank.calc.carspec.HowKnown;
import headertank.calc.carspec.Learned;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/**
 * What was learned as canonical JSON text and back, to the last bit. Stored text is never rewritten: a new format gets a number and a
 * reader of its own.
 */
final class LearnedFormat {

    private LearnedFormat() {}

    /**
     * @param pieces ids of what it was learned from
     * @param unread ids of what could not be read
     * @param problem why nothing is learned; empty when something is
     */
    static String write(Learned learned, List<Long> pieces, List<Long> unread, String problem) {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("format", FieldFormat.FORMAT);
        all.put("pieces", pieces);
        all.put("unread", unread);
        all.put("problem", problem);
        all.put("known", learned.known().name());
        learned.from().ifPresent(b -> {
            all.put("carClass", b.carClass().name());
            all.put("fields", FieldFormat.fields(new FieldValues(b.entries(), Map.of())));
        });
        all.put("factors", learned.factors().stream().map(LearnedFormat::factor).toList());
        all.put("covariance", learned.covariance());
        all.put(
                "notHot",
                learned.notHot().stream()
                        .map(n -> Map.of("upToK", n.upToK(), "summers", n.summers()))
                        .toList());
        all.put("unexplainedK", learned.unexplainedK());
        return CanonicalJson.write(all);
    }

    private static Map<String, Object> factor(Learned.Factor f) {
        return Map.of(
                "key", f.key(),
                "part", f.part().name(),
                "prior", f.prior(),
                "sigma", f.sigma(),
                "relative", f.relative(),
                "moved", f.moved(),
                "left", f.left());
    }

    /** @throws FieldFormat.UnreadableException when the text is of no format that is known */
    static Lesson read(Answer answer) {
        JsonNode all = FieldFormat.root(answer.text());
        List<Learned.Factor> factors = new ArrayList<>();
        for (JsonNode f : all.required("factors")) {
            factors.add(new Learned.Factor(
                    f.required("key").asString(),
                    FieldGroup.valueOf(f.required("part").asString()),
                    f.required("prior").doubleValue(),
                    f.required("sigma").doubleValue(),
                    f.required("relative").booleanValue(),
                    f.required("moved").doubleValue(),
                    f.required("left").doubleValue()));
        }
        List<Double> covariance = new ArrayList<>();
        all.required("covariance").forEach(c -> covariance.add(c.doubleValue()));
        List<Learned.NotHot> notHot = new ArrayList<>();
        all.required("notHot")
                .forEach(n -> notHot.add(new Learned.NotHot(
                        n.required("upToK").doubleValue(), n.required("summers").doubleValue())));
        Optional<Build> from = all.has("carClass")
                ? Optional.of(new Build(
                        CarClass.valueOf(all.required("carClass").asString()),
                        FieldFormat.values(all).entries()))
                : Optional.empty();
        HowKnown known = HowKnown.valueOf(all.required("known").asString());
        return new Lesson(
                answer.id(),
                answer.sha256(),
                new Learned(
                        from,
                        factors,
                        covariance,
                        notHot,
                        all.required("unexplainedK").doubleValue(),
                        known),
                ids(all.required("pieces")),
                ids(all.required("unread")),
                all.required("problem").asString());
    }

    private static List<Long> ids(JsonNode list) {
        List<Long> ids = new ArrayList<>();
        list.forEach(i -> ids.add(i.longValue()));
        return ids;
    }
}
