package headertank.app.carspec.form;

import static headertank.calc.carspec.BuildField.COOLANT_BASE;
import static headertank.calc.carspec.BuildField.COOLANT_GLYCOL;
import static headertank.calc.carspec.BuildField.CORE_HEIGHT;
import static headertank.calc.carspec.BuildField.CORE_WIDTH;
import static headertank.calc.carspec.BuildField.ENGINE_POWER;
import static headertank.calc.carspec.BuildField.FAN_DRIVE;
import static org.assertj.core.api.Assertions.assertThat;

import headertank.app.carspec.Texts;
import headertank.app.field.FieldReader;
import headertank.app.field.FieldText;
import headertank.calc.Rater;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.springframework.util.LinkedMultiValueMap;
import org.springframework.util.MultiValueMap;

/** How far a draft has come, and what to measure next. */
class CompletenessTest {

    private static final Rater RATER = Rater.standard();
    private static final long ESSENTIALS =
            Arrays.stream(BuildField.values()).filter(BuildField::essential).count();

    private final FieldText text = Texts.metric(RATER);
    private final SpecReader reader = new SpecReader(() -> RATER, new FieldReader(text), text);
    private final Preview preview = new Preview(text);
    private final Completeness completeness = new Completeness(text);

    private Completeness.State of(String... pairs) {
        MultiValueMap<String, String> sent = new LinkedMultiValueMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            sent.add(pairs[i], pairs[i + 1]);
        }
        SpecReader.Reading reading = reader.read(SpecForm.sent(sent), Optional.empty(), false);
        return completeness.of(reading, preview.of(reading, RATER), RATER);
    }

    private Completeness.State drift(String... more) {
        String[] pairs = Arrays.copyOf(new String[] {"carClass", "DRIFT", "duties", "drift"}, 4 + more.length);
        System.arraycopy(more, 0, pairs, 4, more.length);
        return of(pairs);
    }

    @Test
    void anEmptyFormHasEverythingBeforeIt() {
        assertThat(of()).isEqualTo(new Completeness.State(0, ESSENTIALS, List.of()));
    }

    @Test
    void whatIsUnderstoodCountsAndWhatIsNotStillWaits() {
        Completeness.State state = drift(ENGINE_POWER.key(), "350 hp", CORE_WIDTH.key(), "wide");
        assertThat(state.stated()).isEqualTo(1);
        assertThat(state.of()).isEqualTo(drift().of());
        assertThat(state.done()).isFalse();
    }

    @Test
    void whatTheCarHasNoUseForIsNotAskedFor() {
        assertThat(drift().of()).isEqualTo(ESSENTIALS);
        assertThat(drift(FAN_DRIVE.key(), "NONE").of()).isEqualTo(ESSENTIALS - 5);
        assertThat(drift(FAN_DRIVE.key(), "CLUTCH").of()).isEqualTo(ESSENTIALS - 1);
        assertThat(drift(COOLANT_BASE.key(), "WATER", COOLANT_GLYCOL.key(), "0 %")
                        .of())
                .isEqualTo(ESSENTIALS - 1);
    }

    @Test
    void theWorstUnknownIsNamedFirstAndAMeasuredOneNoMore() {
        Completeness.State open = drift();
        assertThat(open.next()).hasSize(3).allMatch(n -> !n.guessed());
        assertThat(open.next().get(0).spread()).matches("\\d+\\.\\d K");
        String worst = open.next().get(0).id();
        BuildField field = BuildField.valueOf(worst);
        String value = text.show(field, RATER.resolve(draft()).value(field));
        assertThat(drift(field.key(), value, field.key() + ".from", "MEASURED").next())
                .extracting(Completeness.Next::id)
                .doesNotContain(worst);
        assertThat(drift(CORE_WIDTH.key(), "600 mm", CORE_HEIGHT.key(), "400 mm")
                        .next())
                .filteredOn(n -> n.id().equals(CORE_WIDTH.name()) || n.id().equals(CORE_HEIGHT.name()))
                .allMatch(Completeness.Next::guessed);
    }

    private static Build draft() {
        return Build.of(CarClass.DRIFT);
    }
}
