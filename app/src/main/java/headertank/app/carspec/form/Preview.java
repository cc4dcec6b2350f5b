package headertank.app.carspec.form;

import headertank.app.field.FieldText;
import headertank.calc.Rater;
import headertank.calc.Rating;
import headertank.calc.carspec.Assumption;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.duty.Duty;
import headertank.calc.quantity.InputException;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.risk.Flag;
import headertank.calc.verdict.DutyVerdict;
import headertank.calc.verdict.Finding;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** Rates a draft while somebody types: quick, without uncertainty, kept nowhere. */
@Component
class Preview {

    /**
     * What the draft would be worth.
     *
     * @param duties one line for each chosen duty
     * @param assumed what stands in for each unknown field
     * @param flags titles of risky choices, heaviest first
     * @param faulty labels of fields that could not be read and count as unknown
     * @param problem why there is no rating; empty when there is one
     */
    record Draft(
            List<DutyLine> duties,
            Map<BuildField, Assumption> assumed,
            List<String> flags,
            List<String> faulty,
            String problem) {}

    /**
     * @param style name of the verdict's look
     * @param margin coolant margin with its unit; in words when there is none
     * @param deciding the operating point that decides
     * @param reasons findings that keep it from a go
     */
    record DutyLine(
            String label,
            String verdict,
            String style,
            String margin,
            String deciding,
            boolean byRun,
            List<String> reasons) {}

    private final FieldText text;

    Preview(FieldText text) {
        this.text = text;
    }

    /** @param rater with what is known of the car by its evidence */
    Draft of(SpecReader.Reading reading, Rater rater) {
        List<String> faulty = reading.faults().keySet().stream()
                .flatMap(key -> BuildField.ofKey(key).stream())
                .map(text::label)
                .toList();
        Optional<Build> build = reading.draft();
        if (build.isEmpty()) {
            return new Draft(List.of(), Map.of(), List.of(), faulty, text.message("spec.preview.no-class", ""));
        }
        try {
            Map<BuildField, Assumption> assumed = new EnumMap<>(BuildField.class);
            rater.resolve(build.get()).assumptions().forEach(a -> assumed.put(a.field(), a));
            if (reading.dutyIds().isEmpty()) {
                return new Draft(List.of(), assumed, List.of(), faulty, text.message("spec.preview.no-duty", ""));
            }
            List<Duty> duties =
                    reading.dutyIds().stream().map(rater.duties()::get).toList();
            Rating rating = rater.preview(build.get(), duties);
            return new Draft(
                    rating.duties().stream().map(this::line).toList(),
                    assumed,
                    rating.flags().stream().map(Flag::title).map(text::said).toList(),
                    faulty,
                    "");
        } catch (InputException | OutOfRangeException e) {
            return new Draft(
                    List.of(), Map.of(), List.of(), faulty, text.message("spec.preview.impossible", "", text.why(e)));
        }
    }

    private DutyLine line(DutyVerdict verdict) {
        String token = verdict.verdict().name();
        double margin = verdict.outcome().coolantMarginK();
        return new DutyLine(
                text.duty(verdict.duty().id()),
                text.message("verdict." + token, token),
                token.toLowerCase(Locale.ROOT).replace('_', '-'),
                Double.isFinite(margin) ? text.degrees(margin) : text.message("spec.preview.no-balance", ""),
                text.point(verdict.duty().id(), verdict.outcome().decidingPointId()),
                verdict.outcome().decidedByRun(),
                verdict.findings().stream()
                        .filter(f ->
                                f.verdict() == verdict.verdict() && f.verdict().ordinal() > 0)
                        .map(Finding::text)
                        .map(text::said)
                        .toList());
    }
}
