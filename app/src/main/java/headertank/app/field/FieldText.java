package headertank.app.field;

import headertank.app.language.FigureWords;
import headertank.app.language.ModelWords;
import headertank.app.unit.DecimalSign;
import headertank.app.unit.UnitSystem;
import headertank.app.unit.Units;
import headertank.calc.Rater;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.carspec.FieldGroup;
import headertank.calc.duty.Duty;
import headertank.calc.quantity.Chosen;
import headertank.calc.quantity.Entry;
import headertank.calc.quantity.FigureKind;
import headertank.calc.quantity.InputException;
import headertank.calc.quantity.InputProblem;
import headertank.calc.quantity.Message;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Provenance;
import headertank.calc.quantity.SiFigure;
import headertank.calc.quantity.Stated;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;

/** How fields read on a page and on paper: words from the message files, numbers in the shop's units. */
@Component("fieldText")
public final class FieldText {

    private final MessageSource messages;
    private final ModelWords modelWords;
    private final Supplier<UnitSystem> units;
    private final Supplier<Rater> rater;

    public FieldText(MessageSource messages, ModelWords modelWords, Supplier<UnitSystem> units, Supplier<Rater> rater) {
        this.messages = messages;
        this.modelWords = modelWords;
        this.units = units;
        this.rater = rater;
    }

    public String label(BuildField field) {
        return message("field." + field.key(), field.key());
    }

    /** A sentence that helps with the field, empty when it needs none. */
    public String hint(BuildField field) {
        return message("field." + field.key() + ".hint", "");
    }

    public String group(FieldGroup group) {
        return message("group." + group.name(), group.name());
    }

    public String carClass(CarClass carClass) {
        return message("carClass." + carClass.name(), carClass.name());
    }

    /** Name of a duty; its id when no such duty is installed any more. */
    public String duty(String dutyId) {
        Duty duty = rater.get().duties().get(dutyId);
        return modelWords.duty(dutyId, duty == null ? dutyId : duty.label(), LocaleContextHolder.getLocale());
    }

    /** What calc-core says, in the language and units of the reader. */
    public String said(Message message) {
        return modelWords.of(message);
    }

    /** Names of duties in one piece. */
    public String duties(List<String> dutyIds) {
        return String.join(", ", dutyIds.stream().map(this::duty).toList());
    }

    /** Why a check no longer holds, in words. */
    public String outOfDate(String token) {
        return message("history.why." + token, token);
    }

    /** Name of a duty's operating point; its id when there is no such point any more. */
    public String point(String dutyId, String pointId) {
        Duty duty = rater.get().duties().get(dutyId);
        String known = duty == null
                ? pointId
                : duty.points().stream()
                        .filter(p -> p.id().equals(pointId))
                        .map(p -> p.label())
                        .findFirst()
                        .orElse(pointId);
        return modelWords.point(dutyId, pointId, known, LocaleContextHolder.getLocale());
    }

    /** A stated value in the shop's units, or the option's words. */
    public String show(BuildField field, Entry entry) {
        return entry instanceof Chosen chosen ? option(field, chosen.token()) : show(field, ((Stated) entry).si());
    }

    /** A number of this field in the shop's units. */
    public String show(BuildField field, double si) {
        return FieldUnit.show(field, si, system());
    }

    /** What is stated for the field: as it was typed, and in the shop's unit where that is another one; empty when nothing. */
    public String show(FieldValues values, BuildField field) {
        Entry entry = values.entries().get(field);
        if (entry == null) {
            return "";
        }
        String typed = values.typed().get(field);
        if (typed == null) {
            return show(field, entry);
        }
        String asRead = DecimalSign.inTyped(typed);
        return Units.isInShopUnit(typed, FieldUnit.of(field), system())
                ? asRead
                : asRead + " (" + show(field, entry) + ")";
    }

    /** What a form shows for the field: as it was typed, or the option's token; empty when unknown. */
    public String prefill(FieldValues values, BuildField field) {
        Entry entry = values.entries().get(field);
        if (entry == null) {
            return "";
        }
        if (entry instanceof Chosen chosen) {
            return chosen.token();
        }
        String typed = values.typed().get(field);
        return typed == null ? show(field, entry) : DecimalSign.inTyped(typed);
    }

    /** Tokens that the field can be chosen from here; empty for a number. */
    public List<String> options(BuildField field) {
        return field == BuildField.CORE_CLASS
                ? List.copyOf(rater.get().coreClassLabels().keySet())
                : field.options();
    }

    public String option(BuildField field, String token) {
        String core =
                field == BuildField.CORE_CLASS ? rater.get().coreClassLabels().get(token) : null;
        return message("option." + field.key() + "." + token, core == null ? token : core);
    }

    public String provenance(Provenance from) {
        return message("provenance." + from.name(), from.name());
    }

    /** A difference of temperatures in the shop's unit, with its sign. */
    public String degrees(double kelvins) {
        if (!Double.isFinite(kelvins)) {
            return message("spec.no-figure", "-");
        }
        return modelWords.figures().signed(kelvins);
    }

    private static double tenths(double kelvins) {
        return !Double.isFinite(kelvins) ? kelvins : Math.round(kelvins * 10) / 10.0;
    }

    /** A change of margin with its sign; it fits the two figures as they are shown. */
    public String moved(double beforeK, double afterK) {
        return degrees(tenths(afterK) - tenths(beforeK));
    }

    /** A change of margin in words and figures: gained, lost, or none; it fits the two figures as they are shown. */
    public String change(double beforeK, double afterK) {
        double kelvins = tenths(afterK) - tenths(beforeK);
        if (!Double.isFinite(kelvins)) {
            return degrees(kelvins);
        }
        String size = modelWords.figures().of(SiFigure.difference(Math.abs(kelvins)));
        String key = Math.abs(kelvins) < 0.05 ? "compare.level" : kelvins < 0 ? "compare.lost" : "compare.gained";
        return message(key, size, size);
    }

    /**
     * Why a car cannot be rated, each fault with its field, value and what would do.
     *
     * @param refused an {@link InputException} or an {@link OutOfRangeException}
     */
    public String why(IllegalArgumentException refused) {
        if (refused instanceof InputException input) {
            return input.problems().stream().map(this::fault).collect(Collectors.joining(" "));
        }
        OutOfRangeException outside = (OutOfRangeException) refused;
        FigureKind kind = ModelParameter.kind(outside.field(), outside.allowed());
        FigureWords figures = modelWords.figures();
        return message(
                "spec.fault.beyond-models",
                "",
                ModelParameter.field(outside.field())
                        .map(this::label)
                        .orElseGet(() -> message("model.parameter." + outside.field(), outside.field())),
                figures.plain(outside.value(), kind),
                figures.plain(outside.allowed().min(), kind),
                figures.plain(outside.allowed().max(), kind));
    }

    private String fault(InputProblem problem) {
        String label = message("field." + problem.field(), problem.field());
        String key =
                problem.code() == InputProblem.Code.CONTRADICTION ? "spec.fault.contradicts" : "spec.fault.allowed";
        return message(key, "", label, modelWords.of(problem.value()), said(problem.allowed()));
    }

    /** Symbol of the unit that a bare number is taken in, empty for a number of things. */
    public String unit(BuildField field) {
        return FieldUnit.of(field).symbol(system());
    }

    /** The units that bare numbers are taken in. */
    public UnitSystem system() {
        return units.get();
    }

    /** The text of the message files, or the other one just as it is. */
    public String message(String key, String otherwise, Object... arguments) {
        String found = messages.getMessage(key, arguments, null, LocaleContextHolder.getLocale());
        return found == null ? otherwise : found;
    }
}
