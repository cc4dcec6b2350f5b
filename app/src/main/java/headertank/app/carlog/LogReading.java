package headertank.app.carlog;

import headertank.app.log.file.TimeColumn;
import headertank.app.log.file.TimeWriting;
import headertank.app.log.read.LogMapping;
import headertank.app.log.read.LogMapping.Chosen;
import headertank.app.log.read.LogQuantity;
import headertank.app.stored.CanonicalJson;
import headertank.app.unit.Scaling;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * How a log of a car is read: what its columns are, and what somebody said about the day.
 *
 * @param ambientK air around the car; empty when a column tells it [K]
 * @param drove id of the duty that its driver drove; empty when nobody says so
 */
record LogReading(LogMapping mapping, OptionalDouble ambientK, String drove) {

    private static final int FORMAT = 1;
    private static final JsonMapper JSON = new JsonMapper();

    /** As it is kept: canonical JSON. */
    String text() {
        TimeColumn time = mapping.time();
        List<Object> columns = new ArrayList<>();
        for (Chosen c : mapping.columns()) {
            columns.add(Map.of(
                    "column",
                    c.column(),
                    "quantity",
                    c.quantity().name(),
                    "unit",
                    c.unit().symbol()));
        }
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("format", FORMAT);
        all.put(
                "time",
                Map.of(
                        "column",
                        time.index(),
                        "unit",
                        time.unit(),
                        "writing",
                        time.writing().name()));
        all.put("columns", columns);
        all.put("drove", drove);
        ambientK.ifPresent(k -> all.put("ambientK", k));
        return CanonicalJson.write(all);
    }

    /** @throws IllegalArgumentException when the text is no such reading */
    static LogReading of(String text) {
        JsonNode all = JSON.readTree(text);
        JsonNode time = all.get("time");
        List<Chosen> columns = new ArrayList<>();
        for (JsonNode c : all.get("columns")) {
            LogQuantity quantity = LogQuantity.valueOf(c.get("quantity").asString());
            columns.add(new Chosen(
                    quantity,
                    c.get("column").asInt(),
                    unit(quantity, c.get("unit").asString())));
        }
        TimeColumn when = TimeColumn.chosen(
                time.get("column").asInt(),
                TimeWriting.valueOf(time.get("writing").asString()),
                time.get("unit").asString());
        Optional<JsonNode> ambient = Optional.ofNullable(all.get("ambientK"));
        return new LogReading(
                new LogMapping(when, columns),
                ambient.map(k -> OptionalDouble.of(k.asDouble())).orElse(OptionalDouble.empty()),
                all.get("drove").asString());
    }

    private static Scaling unit(LogQuantity quantity, String symbol) {
        return Scaling.of(quantity.dimension()).stream()
                .filter(s -> s.symbol().equals(symbol))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(quantity + " in " + symbol));
    }
}
