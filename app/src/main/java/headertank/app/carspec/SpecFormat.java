package headertank.app.carspec;

import headertank.app.field.FieldFormat;
import headertank.app.field.FieldFormat.UnreadableException;
import headertank.app.stored.CanonicalJson;
import headertank.calc.carspec.CarClass;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Component;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;

/**
 * A spec as canonical JSON text and back: a {@link FieldFormat} with the class of car and the duties.
 *
 * <pre>{"carClass":"DRIFT","duties":["drift"],"fields":{"radiator.coreWidthM":{"as":"650 mm","from":"MEASURED","si":0.65},
 * "thermostat.state":{"from":"MEASURED","option":"REMOVED"}},"format":1}</pre>
 */
@Component
public final class SpecFormat {

    public String write(Spec spec) {
        return CanonicalJson.write(Map.of(
                "format",
                FieldFormat.FORMAT,
                "carClass",
                spec.build().carClass().name(),
                "duties",
                spec.dutyIds(),
                "fields",
                FieldFormat.fields(spec.values())));
    }

    /** @throws UnreadableException when the text is no spec of a known format */
    public Spec read(String text) {
        try {
            JsonNode root = FieldFormat.root(text);
            List<String> duties = new ArrayList<>();
            root.path("duties").forEach(d -> duties.add(d.asString()));
            CarClass carClass = CarClass.valueOf(root.path("carClass").asString());
            return new Spec(carClass, FieldFormat.values(root), duties);
        } catch (JacksonException | IllegalArgumentException e) {
            throw new UnreadableException("not a spec: " + e.getMessage(), e);
        }
    }
}
