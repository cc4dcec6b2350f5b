package headertank.app.check.stored;

import headertank.app.check.stored.StoredMessage.AmountKind;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Results of format 1, which held sentences in English and names of units, as results of today. Their sentences become texts that
 * are shown as they were stored. Fields that format 1 did not have stay where they are, for the reader to refuse.
 */
final class FormatOne {

    private record Kind(AmountKind kind, double toSi) {}

    private static final Map<String, Kind> UNITS = Map.of(
            "K", new Kind(AmountKind.TEMPERATURE_DIFFERENCE, 1),
            "K absolute", new Kind(AmountKind.TEMPERATURE, 1),
            "A", new Kind(AmountKind.CURRENT, 1),
            "Ah", new Kind(AmountKind.CHARGE, 3600),
            "Pa", new Kind(AmountKind.PRESSURE_GAUGE, 1),
            "kPa", new Kind(AmountKind.PRESSURE_GAUGE, 1000),
            "W", new Kind(AmountKind.POWER, 1),
            "m3/s", new Kind(AmountKind.AIR_FLOW, 1),
            "s", new Kind(AmountKind.TIME, 1),
            "-", new Kind(AmountKind.RATIO, 1));

    private static final Set<String> PARTS = Set.of(
            "What the point asks",
            "Coolant flow",
            "Coolant",
            "Boiling",
            "Steady balance",
            "Air through the core",
            "Fans");

    private FormatOne() {}

    /** A tree of format 1 as one of today. */
    static JsonNode upgraded(JsonNode tree) {
        if (tree instanceof ObjectNode result) {
            upgrade(result);
        }
        return tree;
    }

    private static void upgrade(ObjectNode result) {
        each(result, "duties", FormatOne::duty);
        each(result, "flags", FormatOne::flag);
        each(result, "improvements", i -> {
            says(i, "label");
            each(i, "gains", g -> rename(g, "dutyId", "duty"));
        });
        each(result, "assumptions", a -> says(a, "why"));
        each(result, "notes", n -> says(n, "why"));
        each(result, "conditions", c -> {
            if (c.path("duty").asString("").isEmpty()) {
                says(c, "subject");
            } else {
                subject(c);
            }
            says(c, "text");
        });
        if (result.get("slowCoolant") instanceof ObjectNode slow) {
            slowCoolant(slow, result);
        }
    }

    private static void duty(ObjectNode duty) {
        duty.remove("refused");
        each(duty, "findings", f -> {
            boolean probability = f.path("code").asString("").equals(DutyResult.FindingLine.CHANCE);
            amount(f, probability ? new Kind(AmountKind.PROBABILITY, 1) : null);
            says(f, "text");
            says(f, "doThis");
        });
        each(duty, "points", p -> {
            says(p, "explanation");
            each(p, "working", w -> {
                part(w);
                each(w, "lines", l -> says(l, "quantity"));
            });
        });
    }

    /** Parts of a working are looked up, so that those that format 1 had get the codes of today. */
    private static void part(ObjectNode working) {
        String title = working.path("title").asString("");
        if (PARTS.contains(title)) {
            code(
                    working,
                    "title",
                    "working-part." + title.toLowerCase(Locale.ROOT).replace(' ', '-'));
        } else {
            says(working, "title");
        }
    }

    private static void flag(ObjectNode flag) {
        for (String sentence : List.of("title", "reason", "advice", "tradeSays", "caution")) {
            says(flag, sentence);
        }
        each(flag, "consequences", c -> {
            says(c, "what");
            amount(c, null);
        });
    }

    /** Named duty and point by what they are called. */
    private static void slowCoolant(ObjectNode slow, ObjectNode result) {
        String dutyLabel = slow.path("duty").asString("");
        String pointLabel = slow.path("point").asString("");
        for (JsonNode duty : result.path("duties")) {
            if (duty.path("label").asString("").equals(dutyLabel)) {
                slow.set("duty", duty.get("id"));
                for (JsonNode point : duty.path("points")) {
                    if (point.path("label").asString("").equals(pointLabel)) {
                        slow.set("point", point.get("id"));
                    }
                }
            }
        }
        if (slow.get("words") instanceof ArrayNode words) {
            for (int i = 0; i < words.size(); i++) {
                words.set(i, plain(words.get(i).asString()));
            }
        }
    }

    private static void subject(ObjectNode condition) {
        code(
                condition,
                "subject",
                CheckResult.Condition.subject(condition.path("subject").asString(""))
                        .code());
    }

    private static void code(ObjectNode line, String field, String code) {
        ObjectNode message = line.putObject(field);
        message.put("code", code);
        message.putArray("arguments");
    }

    private static void amount(ObjectNode line, Kind known) {
        JsonNode value = line.remove("value");
        JsonNode unit = line.remove("unit");
        if (value == null || unit == null) {
            throw new IllegalArgumentException("a figure of format 1 has a value and a unit: " + line);
        }
        Kind kind = known == null ? UNITS.get(unit.asString()) : known;
        if (kind == null) {
            throw new IllegalArgumentException("a figure of format 1 has no unit " + unit);
        }
        ObjectNode figure = line.putObject("figure");
        figure.put("type", "amount");
        figure.put("kind", kind.kind().name());
        if (value.isNumber()) {
            figure.put("si", value.asDouble() * kind.toSi());
        } else {
            figure.set("si", value);
        }
    }

    private static void says(ObjectNode line, String field) {
        JsonNode text = line.get(field);
        if (text != null && text.isString()) {
            line.set(field, plain(text.asString()));
        }
    }

    private static ObjectNode plain(String text) {
        ObjectNode message = JsonNodeFactory.instance.objectNode();
        message.put("code", text.isEmpty() ? "" : StoredMessage.PLAIN);
        ArrayNode arguments = message.putArray("arguments");
        if (!text.isEmpty()) {
            ObjectNode argument = arguments.addObject();
            argument.put("type", "text");
            argument.put("text", text);
        }
        return message;
    }

    private static void rename(ObjectNode line, String from, String to) {
        JsonNode value = line.remove(from);
        if (value != null) {
            line.set(to, value);
        }
    }

    private static void each(ObjectNode owner, String list, Consumer<ObjectNode> change) {
        for (JsonNode item : owner.path(list)) {
            if (item instanceof ObjectNode line) {
                change.accept(line);
            }
        }
    }
}
