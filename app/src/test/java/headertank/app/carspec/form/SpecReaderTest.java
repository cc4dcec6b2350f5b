package headertank.app.carspec.form;

import static headertank.calc.carspec.BuildField.CORE_WIDTH;
import static headertank.calc.carspec.BuildField.ENGINE_SPEED;
import static headertank.calc.carspec.BuildField.FAN_DIAMETER;
import static headertank.calc.carspec.BuildField.FAN_FLOW;
import static headertank.calc.carspec.BuildField.FIN_PITCH;
import static headertank.calc.carspec.BuildField.FUEL;
import static headertank.calc.quantity.Provenance.GUESSED;
import static headertank.calc.quantity.Provenance.MEASURED;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headertank.app.carspec.Spec;
import headertank.app.carspec.Texts;
import headertank.app.field.CoreSize;
import headertank.app.field.FieldReader;
import headertank.app.field.FieldText;
import headertank.calc.Rater;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.quantity.Chosen;
import headertank.calc.quantity.FigureKind;
import headertank.calc.quantity.Spread;
import headertank.calc.quantity.Stated;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.util.LinkedMultiValueMap;
import org.springframework.util.MultiValueMap;

/** From what was typed to a spec. */
class SpecReaderTest {

    private final Rater rater = Rater.standard();
    private final FieldText text = Texts.metric(rater);
    private final SpecReader reader = new SpecReader(() -> rater, new FieldReader(text), text);

    private static MultiValueMap<String, String> sent(String... namesAndValues) {
        MultiValueMap<String, String> sent = new LinkedMultiValueMap<>();
        sent.add("carClass", "TRACK");
        sent.add("duties", "track");
        for (int i = 0; i < namesAndValues.length; i += 2) {
            sent.add(namesAndValues[i], namesAndValues[i + 1]);
        }
        return sent;
    }

    private SpecReader.Reading read(String... namesAndValues) {
        return reader.read(SpecForm.sent(sent(namesAndValues)), Optional.empty(), false);
    }

    @Test
    void aFanTableThatFallsIsRefusedBesideItsRow() {
        SpecReader.Reading falling = read(
                BuildField.CONTROL_KIND.key(), "TABLE",
                BuildField.CONTROL_ROW_1_K.key(), "90 °C",
                BuildField.CONTROL_ROW_1_DUTY.key(), "0 %",
                BuildField.CONTROL_ROW_2_K.key(), "185 °F",
                BuildField.CONTROL_ROW_2_DUTY.key(), "100 %",
                BuildField.CONTROL_SOFT_START.key(), "4 s");
        assertThat(falling.faults()).containsOnlyKeys("fanControl.row2K");
        assertThat(falling.faults().get("fanControl.row2K")).contains("above “Fan table row 1: temperature”");
        SpecReader.Reading rising = read(
                BuildField.CONTROL_ROW_1_K.key(), "80",
                BuildField.CONTROL_ROW_1_DUTY.key(), "0",
                BuildField.CONTROL_ROW_2_K.key(), "90",
                BuildField.CONTROL_ROW_2_DUTY.key(), "100",
                BuildField.CONTROL_SOFT_START.key(), "4");
        assertThat(rising.faults()).isEmpty();
        assertThat(rising.spec().build().entry(BuildField.CONTROL_SOFT_START)).contains(new Stated(4, GUESSED, null));
        assertThat(rising.spec().typed()).containsEntry(BuildField.CONTROL_SOFT_START, "4 s");
        assertThat(rising.spec().typed()).containsEntry(BuildField.CONTROL_ROW_2_DUTY, "100 %");
    }

    @Test
    void anyUnitIsTakenAndKeptAsTyped() {
        SpecReader.Reading reading = read(FAN_FLOW.key(), "2500 cfm", CORE_WIDTH.key(), " 650 ", FUEL.key(), "E85");
        assertThat(reading.faults()).isEmpty();
        Spec spec = reading.spec();
        assertThat(((Stated) spec.build().entries().get(FAN_FLOW)).si()).isCloseTo(1.1799, within(1e-4));
        assertThat(spec.build().entry(FAN_FLOW)).get().extracting("from").isEqualTo(GUESSED);
        assertThat(spec.build().entry(CORE_WIDTH)).contains(new Stated(0.65, GUESSED, null));
        assertThat(spec.build().entry(FUEL)).contains(new Chosen("E85", GUESSED));
        assertThat(spec.typed()).isEqualTo(Map.of(FAN_FLOW, "2500 cfm", CORE_WIDTH, "650 mm"));
    }

    @Test
    void aSizeInThreePartsFillsThreeFields() {
        for (String three : List.of("700x420x52", "700 x 420 × 52 mm", "70 cm*420mm*52 mm")) {
            SpecReader.Reading reading = read(CORE_WIDTH.key(), three, CORE_WIDTH.key() + ".from", "MEASURED");
            assertThat(reading.faults()).isEmpty();
            double[] sizes = {0.7, 0.42, 0.052};
            for (int i = 0; i < sizes.length; i++) {
                Stated size = (Stated) reading.values().entries().get(CoreSize.FIELDS.get(i));
                assertThat(size.si()).isCloseTo(sizes[i], within(1e-12));
                assertThat(size.from()).isEqualTo(MEASURED);
            }
        }
        SpecReader.Reading taken = read(CORE_WIDTH.key(), "700x420x52", "radiator.coreHeightM", "400");
        assertThat(taken.faults()).containsOnlyKeys(CORE_WIDTH.key());
        assertThat(taken.values().entries()).containsKey(BuildField.CORE_HEIGHT);
    }

    @Test
    void sharesAndDegreesMayBeWrittenShort() {
        SpecReader.Reading reading = read(
                "coolant.glycolVolumeShare", "50/50",
                "fan.shroudCoverage", "0.85",
                "use.ambientK", "35 deg",
                "coolant.capGaugePa", "1300 mbar");
        assertThat(reading.faults()).isEmpty();
        assertThat(((Stated) reading.values().entries().get(BuildField.COOLANT_GLYCOL)).si())
                .isEqualTo(0.5);
        assertThat(((Stated) reading.values().entries().get(BuildField.FAN_COVER)).si())
                .isEqualTo(0.85);
        assertThat(((Stated) reading.values().entries().get(BuildField.AMBIENT)).si())
                .isEqualTo(308.15);
        assertThat(((Stated) reading.values().entries().get(BuildField.CAP_PRESSURE)).si())
                .isEqualTo(130000);
        assertThat(reading.values().typed())
                .containsEntry(BuildField.COOLANT_GLYCOL, "50 %")
                .containsEntry(BuildField.FAN_COVER, "85 %")
                .containsEntry(BuildField.AMBIENT, "35 °C");
        assertThat(read("coolant.glycolVolumeShare", "60/40").faults()).containsOnlyKeys("coolant.glycolVolumeShare");
    }

    @Test
    void aBareNumberThatMakesNoSenseIsAskedAbout() {
        SpecReader.Reading reading = read("fan.diameterM", "14", "coolant.capGaugePa", "130", "radiator.passes", "14");
        assertThat(reading.faults()).containsOnlyKeys("fan.diameterM", "coolant.capGaugePa", "radiator.passes");
        assertThat(reading.meant()).isEqualTo(Map.of(FAN_DIAMETER, "14 in", BuildField.CAP_PRESSURE, "130 kPa"));
        assertThat(read("fan.diameterM", "14 mm").meant()).isEmpty();
    }

    @Test
    void shaftsTurnInRevolutionsAndFinsMayBeCounted() {
        Build build = read(ENGINE_SPEED.key(), "6000 rpm", FIN_PITCH.key(), "20 fpi")
                .draft()
                .orElseThrow();
        assertThat(((Stated) build.entries().get(ENGINE_SPEED)).si()).isCloseTo(100, within(1e-9));
        assertThat(((Stated) build.entries().get(FIN_PITCH)).si()).isCloseTo(0.00127, within(1e-9));
    }

    @Test
    void everyFaultIsFoundAtOnceAndTheRestCanBeRated() {
        SpecReader.Reading reading = read(
                CORE_WIDTH.key(),
                "6500",
                "radiator.passes",
                "1.5",
                "radiator.coreClass",
                "none-such",
                "fan.mounting",
                "SIDEWAYS",
                "fan.currentA",
                "25",
                "fan.startCurrentA",
                "20",
                "engine.ratedPowerW",
                "200 kW",
                "coolant.capGaugePa",
                "1.3 furlongs");
        assertThat(reading.faults())
                .containsOnlyKeys(
                        CORE_WIDTH.key(),
                        "radiator.passes",
                        "radiator.coreClass",
                        "fan.mounting",
                        "fan.startCurrentA",
                        "coolant.capGaugePa");
        assertThat(reading.faults().get(CORE_WIDTH.key())).isEqualTo("150.0 mm to 1200.0 mm");
        assertThat(reading.draft().orElseThrow().entries().keySet())
                .containsExactlyInAnyOrder(BuildField.FAN_CURRENT, BuildField.ENGINE_POWER);
    }

    @Test
    void classUseAndReasonAreAskedFor() {
        SpecReader.Reading reading = reader.read(SpecForm.sent(new LinkedMultiValueMap<>()), Optional.empty(), true);
        assertThat(reading.faults()).containsOnlyKeys("carClass", "duties", "reason");
    }

    @Test
    void textThatNoDatabaseKeepsIsRefused() {
        assertThat(read(CORE_WIDTH.key(), "650\0mm").faults()).containsOnlyKeys(CORE_WIDTH.key());
        assertThat(read(CORE_WIDTH.key(), "6".repeat(100)).faults()).containsOnlyKeys(CORE_WIDTH.key());
        assertThat(read("reason", "\ud83d").faults()).containsOnlyKeys("reason");
    }

    @Test
    void aFormThatNobodyTouchedIsTheSameSpecToTheLastDigit() {
        Build build = Build.forCar(CarClass.TRACK)
                .set(CORE_WIDTH, Stated.measured(1.0 / 3).within(Spread.relative(0.001)))
                .set(FAN_FLOW, Stated.guessed(0.777777))
                .build();
        Spec spec = new Spec(build, List.of("track"));
        SpecForm form = SpecForm.of(spec, "", 1, text);
        assertThat(reader.read(form, Optional.of(spec), false).spec()).isEqualTo(spec);
    }

    @ParameterizedTest
    @EnumSource(BuildField.class)
    void everyFieldCanBeFilledInAsItIsShown(BuildField field) {
        String[] typed = field.isChoice()
                ? (field.options().isEmpty() ? rater.coreClasses().keySet() : field.options()).toArray(String[]::new)
                : new String[] {text.show(field, field.allowed().clamp(midway(field)))};
        for (String value : typed) {
            String kind = field == BuildField.CONTROL_KIND ? value : "SWITCH"; // of a table one row alone is refused
            SpecReader.Reading reading = read(field.key(), value, BuildField.CONTROL_KIND.key(), kind);
            assertThat(reading.faults()).as(value).isEmpty();
            assertThat(reading.spec().build().entry(field)).as(value).isPresent();
        }
    }

    private static double midway(BuildField field) {
        double middle = (field.allowed().min() + field.allowed().max()) / 2;
        return field.kind() == FigureKind.COUNT ? Math.rint(middle) : middle;
    }

    @Test
    void aKeyThatIsNoneIsReplaced() {
        SpecForm form = SpecForm.sent(sent("key", "x", "parent", "-1"));
        assertThat(form.key()).isInstanceOf(UUID.class);
        assertThat(form.parent()).isNull();
    }
}
