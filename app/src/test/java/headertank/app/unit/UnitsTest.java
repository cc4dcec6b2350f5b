package headertank.app.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import headertank.app.MessageSources;
import headertank.app.unit.UnitException.Code;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class UnitsTest {

    @ParameterizedTest
    @ValueSource(strings = {"1,", ".", "1 000 ", "-", "1e9"})
    void aTextWithoutEndIsRefusedLikeAnyOther(String repeated) {
        String endless = repeated.repeat(500_000);
        assertThatThrownBy(() -> Units.parse(endless, Dimension.TEMPERATURE, UnitSystem.METRIC))
                .isInstanceOf(UnitException.class);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            2500 cfm      | AIR_FLOW               | 1.179868608
            0.85 m3/s     | AIR_FLOW               | 0.85
            0,85 m³/s     | AIR_FLOW               | 0.85
            3000 m3/h     | AIR_FLOW               | 0.8333333333333333
            3000          | AIR_FLOW               | 0.8333333333333333
            2 500 m3/h    | AIR_FLOW               | 0.6944444444444444
            185 F         | TEMPERATURE            | 358.15
            212 °F        | TEMPERATURE            | 373.15
            85 C          | TEMPERATURE            | 358.15
            85            | TEMPERATURE            | 358.15
            -5 °C         | TEMPERATURE            | 268.15
            −5 degC       | TEMPERATURE            | 268.15
            -40 f         | TEMPERATURE            | 233.15
            300 K         | TEMPERATURE            | 300
            9 °F          | TEMPERATURE_DIFFERENCE | 5
            9 C           | TEMPERATURE_DIFFERENCE | 9
            9             | TEMPERATURE_DIFFERENCE | 9
            −3 K          | TEMPERATURE_DIFFERENCE | -3
            1.3 bar       | PRESSURE_GAUGE         | 130000
            1,3 Bar       | PRESSURE_GAUGE         | 130000
            1.3           | PRESSURE_GAUGE         | 130000
            16 psi        | PRESSURE_GAUGE         | 110316.11669069
            16 PSIG       | PRESSURE_GAUGE         | 110316.11669069
            110 kPa       | PRESSURE_GAUGE         | 110000
            1300 mbar     | PRESSURE_GAUGE         | 130000
            35 deg        | TEMPERATURE            | 308.15
            −5°           | TEMPERATURE            | 268.15
            9 deg         | TEMPERATURE_DIFFERENCE | 9
            20 deg        | ANGLE                  | 0.3490658503988659
            1013 hPa      | PRESSURE_ABSOLUTE      | 101300
            0.5 inH2O     | PRESSURE_DIFFERENCE    | 124.544455
            60 l/min      | LIQUID_FLOW            | 0.001
            60 L/min      | LIQUID_FLOW            | 0.001
            10 gpm        | LIQUID_FLOW            | 0.000630901964
            1.2 kg/s      | MASS_FLOW              | 1.2
            350 hp        | POWER                  | 260994.955053771
            500hp         | POWER                  | 372849.935791101
            250 kW        | POWER                  | 250000
            100 PS        | POWER                  | 73549.875
            650 mm        | LENGTH                 | 0.65
            65 cm         | LENGTH                 | 0.65
            0.65 m        | LENGTH                 | 0.65
            16"           | LENGTH                 | 0.4064
            16 in         | LENGTH                 | 0.4064
            48            | LENGTH                 | 0.048
            1200 ft       | ALTITUDE               | 365.76
            2.0 L         | VOLUME                 | 0.002
            1998 cc       | VOLUME                 | 0.001998
            350 ci        | VOLUME                 | 0.0057354724
            25 A          | CURRENT                | 25
            13.5 V        | VOLTAGE                | 13.5
            6000 rpm      | ROTATION               | 628.318530717959
            85 %          | FRACTION               | 0.85
            50            | FRACTION               | 0.5
            0.85 of 1     | FRACTION               | 0.85
            20 deg        | ANGLE                  | 0.349065850398866
            20°           | ANGLE                  | 0.349065850398866
            80 km/h       | SPEED                  | 22.2222222222222
            50 mph        | SPEED                  | 22.352
            20 min        | DURATION               | 1200
            14 fpi        | FINS_PER_LENGTH        | 551.181102362205
            55 fins/dm    | FINS_PER_LENGTH        | 550
            1.5e2 A       | CURRENT                | 150
            """)
    void readsWhatPeopleType(String text, Dimension dimension, double si) {
        assertThat(metric(text, dimension)).isCloseTo(si, within(Math.abs(si) * 1e-12));
    }

    @ParameterizedTest
    @CsvSource({
        "85, TEMPERATURE, 302.594444444444",
        "16, PRESSURE_GAUGE, 110316.11669069",
        "16, LENGTH, 0.4064",
        "9, TEMPERATURE_DIFFERENCE, 5",
        "2500, AIR_FLOW, 1.179868608"
    })
    void aBareNumberIsInTheShopsUnit(String text, Dimension dimension, double si) {
        assertThat(Units.parse(text, dimension, UnitSystem.US)).isCloseTo(si, within(si * 1e-12));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            ''            | LENGTH      | EMPTY
            mm            | LENGTH      | NOT_A_NUMBER
            -             | LENGTH      | NOT_A_NUMBER
            1.2.3 mm      | LENGTH      | NOT_A_NUMBER
            1.234,5 mm    | LENGTH      | NOT_A_NUMBER
            NaN           | LENGTH      | NOT_A_NUMBER
            Infinity m    | LENGTH      | NOT_A_NUMBER
            2,500 cfm     | AIR_FLOW    | AMBIGUOUS_COMMA
            0.85          | FRACTION    | AMBIGUOUS_SHARE
            85 bar        | TEMPERATURE | UNKNOWN_UNIT
            16 psi        | LENGTH      | UNKNOWN_UNIT
            12 mm mm      | LENGTH      | UNKNOWN_UNIT
            0x10 mm       | LENGTH      | UNKNOWN_UNIT
            -300 C        | TEMPERATURE | BELOW_ABSOLUTE_ZERO
            """)
    void refusesWhatItCannotReadForSure(String text, Dimension dimension, Code code) {
        UnitException refused = catchThrowableOfType(UnitException.class, () -> metric(text, dimension));
        assertThat(refused).isNotNull();
        assertThat(refused.code()).isEqualTo(code);
        assertThat(refused.accepted()).isNotEmpty();
    }

    @Test
    void theRefusalNamesWhatIsAccepted() {
        assertThatThrownBy(() -> metric("3 furlongs", Dimension.LENGTH))
                .isInstanceOfSatisfying(
                        UnitException.class, e -> assertThat(e.accepted()).contains("mm", "cm", "m", "in"));
    }

    @Test
    void nothingAtAllIsRefusedToo() {
        assertThatThrownBy(() -> metric(null, Dimension.LENGTH)).isInstanceOf(UnitException.class);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            0.85             | AIR_FLOW               | METRIC | 3060 m³/h
            1.179868608      | AIR_FLOW               | US     | 2500 cfm
            358.15           | TEMPERATURE            | METRIC | 85.0 °C
            358.15           | TEMPERATURE            | US     | 185 °F
            268.15           | TEMPERATURE            | METRIC | -5.0 °C
            273.15           | TEMPERATURE            | METRIC | 0.0 °C
            5                | TEMPERATURE_DIFFERENCE | METRIC | 5.0 K
            5                | TEMPERATURE_DIFFERENCE | US     | 9 °F
            110316.11669069  | PRESSURE_GAUGE         | METRIC | 1.10 bar
            110316.11669069  | PRESSURE_GAUGE         | US     | 16.0 psi
            0.0123           | LENGTH                 | METRIC | 12.3 mm
            0.00004          | LENGTH                 | METRIC | 0.04 mm
            0.349065850398866| ANGLE                  | METRIC | 20°
            0.5              | FRACTION               | METRIC | 50 %
            628.318530717959 | ROTATION               | METRIC | 6000 rpm
            """)
    void showsWhatMakesSense(double si, Dimension dimension, UnitSystem system, String text) {
        assertThat(Units.show(si, dimension, system)).isEqualTo(text);
    }

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void everyUnitReadsBackItsOwnSymbol(Dimension dimension) {
        for (Unit unit : dimension.units()) {
            double si = metric("300 " + unit.symbol(), dimension);
            assertThat(unit.fromSi(si)).as(unit.symbol()).isCloseTo(300, within(1e-9));
            for (String spelling : unit.spellings()) {
                assertThat(metric("300 " + spelling, dimension)).as(spelling).isEqualTo(si);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void noSpellingMeansTwoUnits(Dimension dimension) {
        assertThat(dimension.units().stream()
                        .flatMap(u -> u.spellings().stream().distinct()))
                .doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void whatIsShownReadsBackWithinItsRounding(Dimension dimension) {
        long seed = 20260101L + dimension.ordinal();
        Random random = new Random(seed);
        for (UnitSystem system : UnitSystem.values()) {
            Unit unit = dimension.unit(system);
            for (int i = 0; i < 500; i++) {
                double si = unit.toSi(Math.pow(10, random.nextDouble() * 4));
                double half = 0.5 * Math.pow(10, -unit.decimals()) * unit.factor();
                double back = Units.parse(Units.show(si, dimension, system), dimension, system);
                assertThat(back).as("seed %d, %s", seed, si).isCloseTo(si, within(half * (1 + 1e-6) + 1e-12));
            }
        }
    }

    @Test
    void onlyABareNumberGetsTheShopsUnit() {
        assertThat(Units.withUnit("0.1 m2", Dimension.AREA, UnitSystem.METRIC)).isEqualTo("0.1 m2");
        assertThat(Units.withUnit("1,270", Dimension.LENGTH, UnitSystem.METRIC)).isEqualTo("1,270 mm");
        assertThat(Units.withUnit("-12", Dimension.TEMPERATURE, UnitSystem.US)).isEqualTo("-12 °F");
    }

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void noSentenceOfAFaultHasAHole(Dimension dimension) {
        var messages = MessageSources.all();
        for (String text : new String[] {"", "two", "2 furlongs"}) {
            UnitException e = catchThrowableOfType(UnitException.class, () -> metric(text, dimension));
            for (Locale locale : new Locale[] {Locale.ENGLISH, Locale.GERMAN}) {
                String said = messages.getMessage(e.messageKey(), e.messageArguments(), locale);
                assertThat(said).doesNotContain(" .", ", ,", "  ").doesNotEndWith("von .");
            }
        }
    }

    private static double metric(String text, Dimension dimension) {
        return Units.parse(text, dimension, UnitSystem.METRIC);
    }
}
