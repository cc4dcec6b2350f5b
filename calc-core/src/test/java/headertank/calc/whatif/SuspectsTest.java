package headertank.calc.whatif;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.Builds;
import headertank.calc.Rater;
import headertank.calc.carspec.BuildField;
import headertank.calc.duty.Duty;
import headertank.calc.duty.StandardDuties;
import headertank.calc.quantity.Stated;
import headertank.calc.result.Suspect;
import headertank.calc.result.Suspect.Kind;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What can be wrong on a car, and what it would cost. */
class SuspectsTest {

    private static final Rater RATER = Rater.standard();

    @Test
    void eachFaultCostsWhatTheCarLosesWithIt() {
        Duty duty = StandardDuties.DRIFT;
        List<Suspect> suspects = RATER.suspects(Builds.drift(), duty);
        assertThat(suspects).extracting(Suspect::kind).containsExactlyInAnyOrder(Kind.values());
        assertThat(suspects)
                .isSortedAccordingTo((a, b) -> Double.compare(b.costK(), a.costK()))
                .allSatisfy(s -> assertThat(s.costK()).isNotNegative().isFinite());
        double shut = RATER.marginK(Builds.drift(), duty)
                - RATER.marginK(
                        Builds.drift()
                                .change()
                                .set(BuildField.CORE_BLOCKED, Stated.measured(0.25))
                                .build(),
                        duty);
        assertThat(shut).isPositive();
        assertThat(cost(suspects, Kind.CORE_SHUT)).isCloseTo(shut, within(1e-6));
        assertThat(cost(suspects, Kind.FANS_OUT)).isGreaterThan(cost(suspects, Kind.ONE_FAN_OUT));
    }

    @Test
    void aCarIsOnlySuspectedOfWhatItHas() {
        assertThat(RATER.suspects(
                        Builds.road()
                                .change()
                                .seen(BuildField.FAN_DRIVE, "NONE")
                                .seen(BuildField.THERMOSTAT, "REMOVED")
                                .build(),
                        StandardDuties.TRACK))
                .extracting(Suspect::kind)
                .doesNotContain(Kind.ONE_FAN_OUT, Kind.FANS_OUT, Kind.THERMOSTAT_LATE);
        assertThat(RATER.suspects(Builds.road(), StandardDuties.STREET))
                .as("a single fan is all of them")
                .extracting(Suspect::kind)
                .contains(Kind.FANS_OUT)
                .doesNotContain(Kind.ONE_FAN_OUT);
    }

    private static double cost(List<Suspect> suspects, Kind kind) {
        return suspects.stream()
                .filter(s -> s.kind() == kind)
                .findFirst()
                .orElseThrow()
                .costK();
    }
}
