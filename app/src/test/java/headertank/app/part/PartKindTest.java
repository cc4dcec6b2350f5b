package headertank.app.part;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.app.part.file.PartFile;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.FieldGroup;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The table of kinds and fields against the list of fields. */
class PartKindTest {

    /** Groups that describe what can be bought and bolted on. */
    private static final Set<FieldGroup> BOUGHT = Set.of(
            FieldGroup.RADIATOR,
            FieldGroup.FAN,
            FieldGroup.FAN_CONTROL,
            FieldGroup.COOLANT,
            FieldGroup.THERMOSTAT,
            FieldGroup.PUMP,
            FieldGroup.SENSOR,
            FieldGroup.OIL);

    @ParameterizedTest
    @EnumSource(PartKind.class)
    void aKindSetsFieldsOfItsOwnGroupOnly(PartKind kind) {
        FieldGroup own = kind.fields().get(0).group();
        assertThat(kind.fields()).allSatisfy(f -> assertThat(f.group()).isEqualTo(own));
        assertThat(kind.implied().keySet())
                .doesNotContainAnyElementsOf(kind.fields())
                .allSatisfy(f -> assertThat(f.group()).isEqualTo(own));
        kind.implied().forEach((field, token) -> assertThat(field.options()).contains(token));
    }

    @Test
    void noFieldBelongsToTwoKinds() {
        List<BuildField> all = Arrays.stream(PartKind.values())
                .flatMap(k -> k.fields().stream())
                .toList();
        assertThat(all).doesNotHaveDuplicates();
    }

    @Test
    void everyGroupOfThingsThatAreBoughtHasAKind() {
        assertThat(Arrays.stream(PartKind.values())
                        .map(k -> k.fields().get(0).group())
                        .collect(Collectors.toSet()))
                .isEqualTo(BOUGHT);
    }

    @Test
    void whatDependsOnTheCarIsNoValueOfAPart() {
        assertThat(PartFile.fields())
                .doesNotContain(
                        BuildField.CORE_TILT,
                        BuildField.CORE_BLOCKED,
                        BuildField.CORE_FOULING,
                        BuildField.FAN_COVER,
                        BuildField.FAN_MOUNTING,
                        BuildField.FAN_RATIO,
                        BuildField.HOSE_DIAMETER,
                        BuildField.COOLANT_VOLUME);
    }
}
