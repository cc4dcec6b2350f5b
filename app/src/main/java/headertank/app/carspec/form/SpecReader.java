package headertank.app.carspec.form;

import headertank.app.carspec.Spec;
import headertank.app.field.FieldReader;
import headertank.app.field.FieldText;
import headertank.app.field.FieldValues;
import headertank.app.part.PartKind;
import headertank.app.part.PartRef;
import headertank.calc.Rater;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.springframework.stereotype.Component;

/** Turns what was typed into a spec, or into a sentence for each fault: all of them at once. */
@Component
class SpecReader {

    static final int LONGEST_REASON = 500;

    private final Supplier<Rater> rater;
    private final FieldReader fields;
    private final FieldText text;

    SpecReader(Supplier<Rater> rater, FieldReader fields, FieldText text) {
        this.rater = rater;
        this.fields = fields;
        this.text = text;
    }

    /**
     * What came of a form.
     *
     * @param carClass empty when none was chosen
     * @param dutyIds the duties that are known here
     * @param values of the fields without a fault
     * @param meant what a faulty bare number was probably meant as
     * @param parts of the catalogue that are on the car
     * @param faults a sentence for each faulty field, by its name in the form
     */
    record Reading(
            Optional<CarClass> carClass,
            List<String> dutyIds,
            FieldValues values,
            Map<BuildField, String> meant,
            Map<PartKind, PartRef> parts,
            Map<String, String> faults) {

        /** The spec of a form without a fault. */
        Spec spec() {
            return new Spec(carClass.orElseThrow(), values, dutyIds).withParts(parts);
        }

        /** What could be rated already: the faulty fields count as unknown. */
        Optional<Build> draft() {
            return carClass.map(c -> new Build(c, values.entries()));
        }
    }

    /**
     * @param parent the spec that the form was filled from; a field that still reads as it did there keeps its exact value
     * @param reasonAsked whether a change needs its reason
     */
    Reading read(SpecForm form, Optional<Spec> parent, boolean reasonAsked) {
        Map<String, String> faults = new LinkedHashMap<>();
        Optional<CarClass> carClass = Arrays.stream(CarClass.values())
                .filter(c -> c.name().equals(form.carClass()))
                .findFirst();
        if (carClass.isEmpty()) {
            faults.put("carClass", text.message("spec.class.missing", ""));
        }
        Set<String> installed = rater.get().duties().keySet();
        List<String> duties = form.duties().stream()
                .filter(installed::contains)
                .distinct()
                .sorted()
                .toList();
        List<String> gone =
                form.duties().stream().filter(d -> !installed.contains(d)).toList();
        if (!gone.isEmpty()) {
            faults.put("duties", text.message("spec.duties.gone", "", String.join(", ", gone)));
        } else if (duties.isEmpty()) {
            faults.put("duties", text.message("spec.duties.missing", ""));
        }
        FieldReader.Reading read =
                fields.read(form.fields(), parent.map(Spec::values).orElseGet(FieldValues::none));
        read.faults().forEach((field, fault) -> faults.put(field.key(), fault));
        if (reasonAsked && form.reason().isEmpty()) {
            faults.put("reason", text.message("spec.reason.missing", ""));
        } else if (form.reason().length() > LONGEST_REASON || !FieldReader.storable(form.reason())) {
            faults.put("reason", text.message("spec.fault.text", "", LONGEST_REASON));
        }
        form.parts().forEach((kind, slot) -> {
            if (slot.pending()) {
                faults.put(SpecForm.slotName(kind), text.message("part.fit.pending", ""));
            }
        });
        return new Reading(carClass, duties, read.values(), read.meant(), form.fitted(), faults);
    }
}
