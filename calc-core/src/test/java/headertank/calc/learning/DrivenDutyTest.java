package headertank.calc.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import headertank.calc.Builds;
import headertank.calc.Rater;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Learned;
import headertank.calc.carspec.ModelFactor;
import headertank.calc.carspec.Resolved;
import headertank.calc.duty.StandardDuties;
import headertank.calc.evidence.DriveLog;
import headertank.calc.rating.Plant;
import headertank.calc.rating.PointRater;
import headertank.calc.result.Distribution;
import headertank.calc.uncertainty.ModelSpread;
import headertank.calc.uncertainty.Unknowns;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A log of which somebody says what duty it drove tells how hard this driver drives. */
class DrivenDutyTest {

    private static final Rater RATER = Rater.standard();
    private static final Build CAR = Builds.drift();

    /** @return the log of an invented driver who drives so many standard deviations harder */
    private static DriveLog log(double harder) {
        Resolved expected = RATER.resolve(CAR);
        Unknowns unknowns = new Unknowns(expected);
        ModelSpread spread =
                ModelSpread.of(expected, PointRater.rate(Plant.of(expected), StandardDuties.STREET.point("hill")));
        double[] z = new double[unknowns.size()];
        z[unknowns.place(ModelFactor.DEMAND.key())] = harder;
        return SyntheticDrive.of(
                unknowns.plant(unknowns.values(z).with(BuildField.AMBIENT, SyntheticDrive.AMBIENT_K), z, spread), 5);
    }

    private static Learned.Factor demand(DriveLog log) {
        return demand(RATER.learn(CAR, log));
    }

    private static Learned.Factor demand(Learned learned) {
        return learned.factor(ModelFactor.DEMAND.key()).orElseThrow();
    }

    private static double width(Learned learned) {
        Distribution d = RATER.knowing(learned)
                .rate(CAR, List.of(StandardDuties.TRACK), 128)
                .duty("track")
                .outcome()
                .marginSpread()
                .orElseThrow();
        return d.high() - d.low();
    }

    @Test
    void aDriverWhoDrivesHarderIsKnownByTheLog() {
        Learned.Factor gentle = demand(log(-1.5));
        Learned.Factor hard = demand(log(1.5));
        assertThat(hard.moved()).isGreaterThan(gentle.moved() + 1);
        assertThat(hard.left()).isLessThan(0.7);
    }

    /** The same rows teach nothing of the driver when nobody says what was driven, and the undriven track knows it. */
    @Test
    void whatWasDrivenMustBeSaid() {
        DriveLog told = log(0);
        DriveLog untold = new DriveLog(told.ambientK(), told.ambientSigmaK(), told.rows());
        Learned without = RATER.learn(CAR, untold);
        assertThat(demand(without).left()).isGreaterThan(0.99);
        assertThat(width(RATER.learn(CAR, told))).as("an undriven duty").isLessThan(0.6 * width(without));
    }

    /** An hour in the queue is no drift, whatever it is called. */
    @Test
    void aLogWithoutAPieceOfTheDutySaysNothingOfTheDriver() {
        DriveLog told = log(0);
        DriveLog queue =
                new DriveLog(told.ambientK(), told.ambientSigmaK(), told.rows().subList(0, 170), told.drove());
        assertThat(demand(queue).left()).isGreaterThan(0.99);
        assertThatThrownBy(() -> told.driving(StandardDuties.STREET))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("street");
    }

    /** Coolant of a racing pump changes faster than a second: a car that is hardly another shows hardly anything else. */
    @Test
    void aReplayIsSmooth() {
        DriveLog log = log(1);
        Resolved expected = RATER.resolve(CAR);
        Unknowns unknowns = new Unknowns(expected);
        ModelSpread spread =
                ModelSpread.of(expected, PointRater.rate(Plant.of(expected), StandardDuties.STREET.point("hill")));
        double[] z = new double[unknowns.size()];
        z[unknowns.place(BuildField.COOLANT_VOLUME.key())] = -1.5;
        z[unknowns.place(BuildField.PUMP_FLOW.key())] = 1.5;
        z[unknowns.place(ModelFactor.CIRCUIT.key())] = -1.5;
        double[] before = shown(log, expected, unknowns.plant(unknowns.values(z), z, spread));
        z[unknowns.place(ModelFactor.COOLANT_HEAT.key())] = 0.01;
        double[] after = shown(log, expected, unknowns.plant(unknowns.values(z), z, spread));
        for (int i = 0; i < before.length; i++) {
            assertThat(Math.abs(after[i] - before[i])).as("block %d", i).isLessThan(0.3);
        }
    }

    private static double[] shown(DriveLog log, Resolved expected, Plant plant) {
        return new DrivenLog(log, expected).answer(plant, 0, DrivenLog.USUAL).shownK();
    }
}
