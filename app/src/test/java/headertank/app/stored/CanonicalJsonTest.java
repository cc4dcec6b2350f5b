package headertank.app.stored;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** RFC 8785: one text for one value. */
class CanonicalJsonTest {

    /** Bits and text from the number samples in appendix B of RFC 8785. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            0000000000000000, 0
            8000000000000000, 0
            0000000000000001, 5e-324
            8000000000000001, -5e-324
            7fefffffffffffff, 1.7976931348623157e+308
            4340000000000000, 9007199254740992
            4430000000000000, 295147905179352830000
            44b52d02c7e14af5, 9.999999999999997e+22
            44b52d02c7e14af6, 1e+23
            44b52d02c7e14af7, 1.0000000000000001e+23
            444b1ae4d6e2ef4e, 999999999999999700000
            444b1ae4d6e2ef4f, 999999999999999900000
            444b1ae4d6e2ef50, 1e+21
            3eb0c6f7a0b5ed8c, 9.999999999999997e-7
            3eb0c6f7a0b5ed8d, 0.000001
            41b3de4355555553, 333333333.3333332
            41b3de4355555555, 333333333.3333333
            becbf647612f3696, -0.0000033333333333333333
            43143ff3c1cb0959, 1424953923781206.2
            """)
    void numbersReadAsEcmaScriptPrintsThem(String bits, String text) {
        double value = Double.longBitsToDouble(Long.parseUnsignedLong(bits, 16));
        assertThat(CanonicalJson.number(value)).isEqualTo(text);
    }

    @Test
    void everyNumberReadsBackExactly() {
        long seed = 20260103L;
        Random random = new Random(seed);
        for (int i = 0; i < 20_000; i++) {
            double value = Double.longBitsToDouble(random.nextLong());
            if (Double.isFinite(value)) {
                String text = CanonicalJson.number(value);
                assertThat(Double.parseDouble(text))
                        .as("seed %d, %s", seed, text)
                        .isEqualTo(value + 0.0);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void whatJsonHasNoWordForIsRefused(double value) {
        assertThatThrownBy(() -> CanonicalJson.number(value)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void keysAreSortedAndTextIsEscapedAsLittleAsPossible() {
        String text = CanonicalJson.write(
                Map.of("b", List.of(1, true, "x"), "a", "€\u000f\n\"\\/é", "\ud83d\ude00", 1, "\ufb33", 2));
        assertThat(text)
                .isEqualTo("{\"a\":\"€\\u000f\\n\\\"\\\\/é\",\"b\":[1,true,\"x\"],\"\ud83d\ude00\":1,\"\ufb33\":2}");
    }

    @Test
    void halfACharacterIsRefused() {
        assertThatThrownBy(() -> CanonicalJson.write("\ud83d")).isInstanceOf(IllegalArgumentException.class);
    }
}
