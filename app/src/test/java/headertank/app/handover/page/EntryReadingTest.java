package headertank.app.handover.page;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.app.handover.EntryForm;
import headertank.app.handover.item.CheckItem;
import headertank.app.handover.item.ItemOutcome;
import headertank.app.handover.item.MeasuredQuantity;
import headertank.app.handover.item.WarmUpStage;
import headertank.app.unit.UnitSystem;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.validation.Errors;
import org.springframework.validation.SimpleErrors;

class EntryReadingTest {

    @ParameterizedTest
    @CsvSource({
        "FANS_START, 12:30, 750",
        "FANS_START, 12.5 min, 750",
        "GAUGE_AT_FAN_START, 200 °F, 366.483",
        "CORE_DROP, 9 °F, 5",
        "VOLTAGE, 13.6, 13.6",
        "PRESSURE_HELD, 1.3, 130000"
    })
    void aReadingIsReadInItsUnits(MeasuredQuantity quantity, String typed, double si) {
        EntryForm form = form(ItemOutcome.MEASURED, typed, "");
        Errors faults = new SimpleErrors(form);
        Optional<Double> value = EntryReading.read(item(quantity), form, UnitSystem.METRIC, faults);
        assertThat(faults.hasErrors()).isFalse();
        assertThat(value.orElseThrow()).isCloseTo(si, Offset.offset(1e-3));
    }

    @ParameterizedTest
    @CsvSource({
        "FANS_START, 12, handover.value.bare-time",
        "FANS_START, 9 h, handover.value.range",
        "VOLTAGE, 138, handover.value.range",
        "VOLTAGE, much, unit.not-a-number",
        "FAN_RUNNING_CURRENT, 12 bar, unit.unknown-unit"
    })
    void whatCannotBeMeantIsRefusedWithItsReason(MeasuredQuantity quantity, String typed, String code) {
        assertThat(codes(item(quantity), form(ItemOutcome.MEASURED, typed, ""))).containsExactly(code);
    }

    @Test
    void aFaultAndALeftOutItemNeedWordsAndAMeasuredItemIsNotSimplyDone() {
        CheckItem seen = item(null);
        assertThat(codes(seen, form(ItemOutcome.FAULT, "", ""))).containsExactly("handover.note.fault");
        assertThat(codes(seen, form(ItemOutcome.NOT_APPLICABLE, "", ""))).containsExactly("handover.note.left-out");
        assertThat(codes(seen, form(ItemOutcome.FAULT, "", "drips"))).isEmpty();
        assertThat(codes(seen, form(ItemOutcome.DONE, "", ""))).isEmpty();
        assertThat(codes(item(MeasuredQuantity.VOLTAGE), form(ItemOutcome.DONE, "", "")))
                .containsExactly("handover.value.missing");
        assertThat(codes(seen, form(ItemOutcome.MEASURED, "3 V", ""))).containsExactly("handover.value.none");
    }

    private static List<String> codes(CheckItem item, EntryForm form) {
        Errors faults = new SimpleErrors(form);
        EntryReading.read(item, form, UnitSystem.METRIC, faults);
        return faults.getFieldErrors().stream().map(e -> e.getCode()).toList();
    }

    private static EntryForm form(ItemOutcome outcome, String value, String note) {
        return new EntryForm(UUID.randomUUID(), "x", outcome, value, note);
    }

    private static CheckItem item(MeasuredQuantity quantity) {
        return new CheckItem(
                "x",
                WarmUpStage.COLD,
                "x",
                Optional.ofNullable(quantity),
                "",
                "",
                Double.NaN,
                false,
                List.of(),
                Optional.empty());
    }
}
