package headertank.calc.rating;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class RisingRootTest {

    private int calls;

    @Test
    void aStraightLineTakesFewSteps() {
        assertThat(find(x -> 3 * (x - 7), 0, 100, 90, 2)).isCloseTo(7, within(1e-9));
        assertThat(calls).isLessThanOrEqualTo(6);
    }

    @Test
    void kinksAndFlatPartsAreNoTrap() {
        DoubleUnaryOperator kink = x -> x < 40 ? 0.01 * (x - 40) - 1 : 200 * (x - 40) - 1;
        assertThat(find(kink, 0, 100, 5, 1)).isCloseTo(40.005, within(1e-9));
        assertThat(find(kink, 0, 100, 95, 1)).isCloseTo(40.005, within(1e-9));
        DoubleUnaryOperator cubic = x -> Math.pow(x - 33, 3);
        assertThat(find(cubic, 0, 100, 90, 1000)).isCloseTo(33, within(1e-2));
        assertThat(calls).isLessThan(60);
    }

    @Test
    void aStepIsNarrowedToItsPlace() {
        assertThat(find(x -> x < 62.5 ? -1 : 1, 0, 100, 10, 1)).isCloseTo(62.5, within(1e-8));
    }

    @Test
    void noSignChangeIsSaidByInfinity() {
        assertThat(find(x -> x + 1, 0, 100, 50, 1)).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(find(x -> x - 101, 0, 100, 50, 1)).isEqualTo(Double.POSITIVE_INFINITY);
    }

    @Test
    void fromAnyGuessToAnyRoot() {
        for (int root = 1; root < 100; root += 7) {
            for (int guess = 0; guess <= 100; guess += 10) {
                double r = root;
                double found = find(x -> Math.sinh((x - r) / 20), 0, 100, guess, 0.05);
                assertThat(found).as("root %s from %s", root, guess).isCloseTo(root, within(1e-6));
                assertThat(calls).as("root %s from %s", root, guess).isLessThan(30);
            }
        }
    }

    private double find(DoubleUnaryOperator f, double low, double high, double guess, double slope) {
        calls = 0;
        DoubleUnaryOperator counted = x -> {
            assertThat(x).isBetween(low, high);
            calls++;
            return f.applyAsDouble(x);
        };
        return RisingRoot.find(counted, low, high, guess, counted.applyAsDouble(guess), slope, 1e-9, 1e-10);
    }
}
