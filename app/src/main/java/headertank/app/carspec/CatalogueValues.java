package headertank.app.carspec;

import headertank.app.part.FieldValues;
import headertank.app.part.PartValues;
import headertank.calc.Rater;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.quantity.Chosen;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Component;

/** The spec's reader and format at work on values that belong to no car: those of the catalogue. */
@Component
class CatalogueValues implements FieldValues {

    private final SpecReader reader;
    private final SpecFormat format;
    private final FieldText text;
    private final Rater rater;

    CatalogueValues(SpecReader reader, SpecFormat format, FieldText text, Rater rater) {
        this.reader = reader;
        this.format = format;
        this.text = text;
        this.rater = rater;
    }

    @Override
    public Reading read(Map<BuildField, Typed> typed, PartValues before) {
        Map<BuildField, SpecForm.Typed> fields = new EnumMap<>(BuildField.class);
        typed.forEach((field, t) -> fields.put(field, new SpecForm.Typed(t.text(), t.from())));
        SpecForm form = new SpecForm("", List.of(), fields, "", null, UUID.randomUUID(), Map.of());
        SpecReader.Reading read = reader.read(form, Optional.of(anyCar(before)), false);
        Map<BuildField, String> faults = new EnumMap<>(BuildField.class);
        read.faults().forEach((key, fault) -> BuildField.ofKey(key).ifPresent(f -> faults.put(f, fault)));
        return new Reading(new PartValues(read.entries(), read.typed()), faults);
    }

    @Override
    public String text(PartValues values, BuildField field) {
        return SpecForm.prefill(anyCar(values), field, text);
    }

    @Override
    public String show(PartValues values, BuildField field) {
        return values.entries().get(field) instanceof Chosen chosen
                ? text.option(field, chosen.token())
                : text.show(anyCar(values), field);
    }

    @Override
    public List<String> options(BuildField field) {
        return field == BuildField.CORE_CLASS
                ? rater.coreClasses().keySet().stream().sorted().toList()
                : field.options();
    }

    @Override
    public String write(PartValues values) {
        return format.write(values);
    }

    @Override
    public PartValues read(String stored) {
        return format.readValues(stored);
    }

    /** The values in a spec; neither its class of car nor its duty is looked at. */
    private static Spec anyCar(PartValues values) {
        return new Spec(new Build(CarClass.values()[0], values.entries()), List.of("none"), values.typed());
    }
}
