package headertank.calc.electric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.quantity.OutOfRangeException;
import org.junit.jupiter.api.Test;

class ElectricBalanceTest {

    private static final AlternatorSpec TRACK = AlternatorSpec.of(90, 20);

    @Test
    void alternatorRisesFromIdleToItsRating() {
        assertThat(TRACK.outputA(1)).isCloseTo(36, within(1e-9));
        assertThat(TRACK.outputA(0)).isZero();
        double before = -1;
        for (double r = 0.5; r < 12; r += 0.01) {
            double now = TRACK.outputA(r);
            assertThat(now).as("at %s times idle", r).isGreaterThan(before).isLessThanOrEqualTo(90);
            assertThat(now - before).as("step at %s times idle", r).isLessThan(1.01);
            before = now;
        }
        assertThat(before).isCloseTo(90, within(0.01));
    }

    @Test
    void enoughCurrentKeepsTheVoltage() {
        ElectricBalance b = ElectricBalance.of(TRACK, 5, 44, 1, FanStart.SOFT);

        assertThat(b.voltageV()).isEqualTo(13.5);
        assertThat(b.deficitA()).isZero();
        assertThat(b.fanA()).isEqualTo(44);
        assertThat(b.fanSpeedFactor()).isEqualTo(1);
    }

    /** 12.4 V leave 0.92 of the fan's speed. */
    @Test
    void tooManyFansAtIdleDrainTheBattery() {
        ElectricBalance b = ElectricBalance.of(TRACK, 1, 44, 1, FanStart.ABRUPT);

        assertThat(b.voltageV()).isCloseTo(12.4, within(1e-12));
        assertThat(b.fanSpeedFactor()).isCloseTo(0.92, within(0.005));
        assertThat(b.fanA()).isCloseTo(44 * Math.pow(12.4 / 13.5, 2), within(1e-9));
        assertThat(b.deficitA()).isCloseTo(20 + b.fanA() - 36, within(1e-9));
        assertThat(b.startA()).isCloseTo(20 + 1.2 * 44, within(1e-9));
    }

    @Test
    void inBetweenTheVoltageSettlesWhereSupplyMeetsDemand() {
        ElectricBalance b = ElectricBalance.of(TRACK, 1, 17.5, 1, FanStart.SOFT);

        assertThat(b.voltageV()).isBetween(12.4, 13.5);
        assertThat(b.baseLoadA() + b.fanA()).isCloseTo(b.supplyA(), within(1e-9));
        assertThat(b.deficitA()).isCloseTo(0, within(1e-9));
    }

    @Test
    void moreFanNeverRaisesVoltageAndNeverLowersTheDeficit() {
        double volts = 99;
        double deficit = -1;
        for (double amps = 0; amps <= 120; amps += 0.25) {
            ElectricBalance b = ElectricBalance.of(TRACK, 1, amps, 1, FanStart.SOFT);
            assertThat(b.voltageV()).as("%s A", amps).isLessThanOrEqualTo(volts);
            assertThat(b.deficitA()).as("%s A", amps).isGreaterThanOrEqualTo(deficit - 1e-9);
            volts = b.voltageV();
            deficit = b.deficitA();
        }
        assertThat(deficit).isPositive();
    }

    @Test
    void baseLoadAloneMayExceedTheSupply() {
        ElectricBalance b = ElectricBalance.of(new AlternatorSpec(40, 0.4, 35), 1, 0, 0, FanStart.SOFT);

        assertThat(b.voltageV()).isCloseTo(12.4, within(1e-12));
        assertThat(b.deficitA()).isCloseTo(19, within(1e-9));
    }

    @Test
    void halfDutyAsksAQuarter() {
        assertThat(ElectricBalance.fanCurrentA(20, 0.5)).isCloseTo(5, within(1e-12));
        assertThatThrownBy(() -> ElectricBalance.fanCurrentA(20, 1.1)).isInstanceOf(OutOfRangeException.class);
    }
}
