package headertank.app.known;

import headertank.app.carspec.Revisions;
import headertank.app.field.FieldText;
import headertank.calc.carspec.BuildField;
import java.util.List;
import org.springframework.stereotype.Component;

/** What the line for a settled reading offers. */
@Component("readingLine")
class ReadingLine {

    private final Revisions revisions;
    private final CarFindings findings;
    private final FieldText words;

    ReadingLine(Revisions revisions, CarFindings findings, FieldText words) {
        this.revisions = revisions;
        this.findings = findings;
        this.words = words;
    }

    /** Something that can be chosen. */
    record Option(String value, String label) {}

    /** What the car may have done: points of its duties at which a reading settles; none of a car that nobody has described. */
    public List<Option> points(long carId) {
        return revisions.latest(carId).map(findings::duties).orElse(List.of()).stream()
                .flatMap(d -> ReadingEntry.settling(d).stream()
                        .map(p -> new Option(
                                d.id() + "/" + p.id(), words.duty(d.id()) + ": " + words.point(d.id(), p.id()))))
                .toList();
    }

    /** Places of a sensor that is not the gauge's. */
    public List<Option> sensors() {
        return words.options(BuildField.GAUGE_SENSOR).stream()
                .map(t -> new Option(t, words.option(BuildField.GAUGE_SENSOR, t)))
                .toList();
    }

    public Dial[] dials() {
        return Dial.values();
    }

    public ReadingForm blank() {
        return ReadingForm.blank();
    }
}
