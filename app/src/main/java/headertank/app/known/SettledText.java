package headertank.app.known;

import headertank.app.stored.CanonicalJson;
import headertank.calc.Rater;
import headertank.calc.choice.SensorPlacement;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.evidence.SettledReading;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * A settled reading as it is kept.
 *
 * @param duty id of the duty
 * @param point id of its point
 * @param sensor where the sensor sits; empty for that of the car's gauge
 */
record SettledText(
        String duty, String point, double shownK, double outsideK, double sigmaK, Optional<SensorPlacement> sensor) {

    private static final int FORMAT = 1;
    private static final JsonMapper JSON = new JsonMapper();

    /** Canonical JSON. */
    String text() {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("format", FORMAT);
        all.put("duty", duty);
        all.put("point", point);
        all.put("shownK", shownK);
        all.put("outsideK", outsideK);
        all.put("sigmaK", sigmaK);
        sensor.ifPresent(s -> all.put("sensor", s.name()));
        return CanonicalJson.write(all);
    }

    static SettledText of(String text) {
        JsonNode all = JSON.readTree(text);
        return new SettledText(
                all.required("duty").asString(),
                all.required("point").asString(),
                all.required("shownK").doubleValue(),
                all.required("outsideK").doubleValue(),
                all.required("sigmaK").doubleValue(),
                Optional.ofNullable(all.get("sensor")).map(s -> SensorPlacement.valueOf(s.asString())));
    }

    /** For calc-core; empty when its duty is switched off or has no such point any more. */
    Optional<SettledReading> reading(Rater rater) {
        Optional<OperatingPoint> at = Optional.ofNullable(rater.duties().get(duty)).stream()
                .flatMap(d -> d.points().stream())
                .filter(p -> p.id().equals(point) && !p.engineOff())
                .findFirst();
        return at.map(p -> new SettledReading(p, outsideK, shownK, sigmaK, sensor));
    }
}
