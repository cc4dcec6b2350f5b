package headertank.app.carspec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import headertank.app.field.FieldFormat;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.quantity.Chosen;
import headertank.calc.quantity.Entry;
import headertank.calc.quantity.FigureKind;
import headertank.calc.quantity.Provenance;
import headertank.calc.quantity.Spread;
import headertank.calc.quantity.Stated;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The stored form of a spec. */
class SpecFormatTest {

    private final SpecFormat format = new SpecFormat();

    /** Written once, never to be edited: rows like it lie in databases. */
    private static String sample() throws IOException {
        try (InputStream file = SpecFormatTest.class.getResourceAsStream("format-1.json")) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void aStoredSpecOfFormat1IsReadAndWrittenByteForByte() throws IOException {
        Spec spec = format.read(sample());
        assertThat(spec.build().carClass()).isEqualTo(CarClass.DRIFT);
        assertThat(spec.dutyIds()).containsExactly("drift", "street");
        assertThat(spec.build().entry(BuildField.FAN_FLOW)).contains(Stated.advertised(1.179868608));
        assertThat(spec.build().entry(BuildField.CORE_WIDTH))
                .contains(Stated.measured(0.65).within(Spread.relative(0.005)));
        assertThat(spec.build().entry(BuildField.THERMOSTAT)).contains(new Chosen("REMOVED", Provenance.MEASURED));
        assertThat(spec.typed()).containsEntry(BuildField.FAN_FLOW, "2500 cfm");
        assertThat(format.write(spec)).isEqualTo(sample());
    }

    @Test
    void aSpecStoredBeforeAFieldExistedIsReadWithoutIt() throws IOException {
        Map<BuildField, Entry> entries = format.read(sample()).build().entries();
        assertThat(entries)
                .doesNotContainKeys(
                        BuildField.CONTROL_LOW_SET,
                        BuildField.CONTROL_ROW_1_K,
                        BuildField.PUMP_RUN_ON,
                        BuildField.OIL_THERMOSTAT_OPENING);
        Spec switched = format.read(
                "{\"carClass\":\"TRACK\",\"duties\":[\"track\"],\"fields\":{\"fanControl.kind\":{\"from\":\"MEASURED\",\"option\":\"SWITCH\"},\"fanControl.setK\":{\"as\":\"90 C\",\"from\":\"MEASURED\",\"si\":363.15}},\"format\":1}");
        assertThat(switched.build().entry(BuildField.CONTROL_KIND)).contains(new Chosen("SWITCH", Provenance.MEASURED));
        assertThat(switched.build().entries()).hasSize(2);
    }

    @Test
    void whatIsWrittenReadsBackTheSame() {
        long seed = 20260102L;
        Random random = new Random(seed);
        for (int i = 0; i < 300; i++) {
            Spec spec = any(random);
            String text = format.write(spec);
            assertThat(format.read(text)).as("seed %d, %s", seed, text).isEqualTo(spec);
        }
    }

    @Test
    void theOrderOfFillingInDoesNotShow() {
        Spec one = SpecBuilder.of(CarClass.TRACK, "track", "street")
                .set(BuildField.CORE_WIDTH, "650 mm", Provenance.MEASURED)
                .seen(BuildField.FUEL, "E85")
                .spec();
        Spec other = SpecBuilder.of(CarClass.TRACK, "street", "track")
                .seen(BuildField.FUEL, "E85")
                .set(BuildField.CORE_WIDTH, "650 mm", Provenance.MEASURED)
                .spec();
        assertThat(format.write(one)).isEqualTo(format.write(other));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "{",
                "[]",
                "{\"format\":2}",
                "{\"carClass\":\"DRIFT\",\"duties\":[\"drift\"],\"fields\":{\"no.such\":{\"from\":\"MEASURED\",\"si\":1}},\"format\":1}",
                "{\"carClass\":\"DRIFT\",\"duties\":[],\"fields\":{},\"format\":1}",
                "{\"carClass\":\"DRIFT\",\"carClass\":\"TRACK\",\"duties\":[\"drift\"],\"fields\":{},\"format\":1}"
            })
    void textThatIsNoSpecIsRefused(String text) {
        assertThatThrownBy(() -> format.read(text)).isInstanceOf(FieldFormat.UnreadableException.class);
    }

    private static Spec any(Random random) {
        Map<BuildField, Entry> entries = new EnumMap<>(BuildField.class);
        Map<BuildField, String> typed = new EnumMap<>(BuildField.class);
        for (BuildField f : BuildField.values()) {
            Provenance from = Provenance.values()[random.nextInt(4)];
            if (random.nextBoolean()) {
                continue;
            }
            if (f.isChoice()) {
                List<String> options = f.options().isEmpty() ? List.of("dense-aluminium") : f.options();
                entries.put(f, new Chosen(options.get(random.nextInt(options.size())), from));
            } else {
                double span = f.allowed().max() - f.allowed().min();
                double si = f.allowed().clamp(f.allowed().min() + span * random.nextDouble());
                boolean whole = f.kind() == FigureKind.COUNT;
                entries.put(f, new Stated(whole ? Math.rint(si) : si, from, null));
                typed.put(f, "\"as\" typed \\ 5,3 m³ 🚗\t");
            }
        }
        return new Spec(new Build(CarClass.TRACK, entries), List.of("track"), typed);
    }
}
