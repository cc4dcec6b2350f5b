package headertank.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.HowKnown;
import headertank.calc.carspec.Learned;
import headertank.calc.carspec.ModelFactor;
import headertank.calc.engine.EngineClass;
import headertank.calc.evidence.DriveLog;
import headertank.calc.evidence.Replay;
import headertank.calc.fluid.Fuel;
import headertank.calc.learning.MeasuredLogs;
import headertank.calc.population.MeasuredCar;
import headertank.calc.quantity.OutOfRangeException;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Logs of a real car, through the door. */
class LogLearnTest {

    private static final Rater RATER = Rater.standard();
    private static final Build CAR = MeasuredCar.build();
    private static final DriveLog STANDING = MeasuredLogs.named("idle23");
    private static final DriveLog DRIVEN = MeasuredLogs.named("live13");

    /** The car has never been seen driving when it predicts the drive, cold start included. */
    @Test
    void aStandingLogPredictsADrive() {
        double before = RATER.replay(CAR, DRIVEN).rootMeanSquareK();
        Learned learned = RATER.learn(CAR, STANDING);
        Rater known = RATER.knowing(learned);
        assertThat(before).isGreaterThan(5);
        assertThat(known.replay(CAR, STANDING).rootMeanSquareK()).isLessThan(2);
        assertThat(known.replay(CAR, DRIVEN).rootMeanSquareK()).isLessThan(0.55 * before);
        assertThat(learned.factor(ModelFactor.METAL_MASS.key()).orElseThrow().moved())
                .as("less metal follows the coolant at once")
                .isLessThan(-1);
        assertThat(learned.known()).isEqualTo(HowKnown.FROM_A_RUN);
        assertThat(RATER.learn(CAR, STANDING)).isEqualTo(learned);
    }

    /** A run as the car is known confirms it; one in which every reading is ten kelvins higher does not. */
    @Test
    void anotherRunConfirmsOrDoesNot() {
        Learned learned = RATER.learn(CAR, STANDING);
        Rater known = RATER.knowing(learned);
        List<DriveLog.Row> hotter = STANDING.rows().stream()
                .map(r -> new DriveLog.Row(
                        r.timeS(),
                        r.coolantK() + (r.timeS() > STANDING.rows().get(60).timeS() ? 10 : 0),
                        r.enginePerS(),
                        r.manifoldPa(),
                        r.intakeK(),
                        r.roadMPerS()))
                .toList();
        assertThat(known.confirms(CAR, STANDING)).isTrue();
        assertThat(known.confirms(CAR, DRIVEN)).isTrue();
        assertThat(known.confirms(CAR, new DriveLog(STANDING.ambientK(), 3, hotter)))
                .isFalse();
        assertThat(learned.confirmed().known()).isEqualTo(HowKnown.CONFIRMED_BY_ANOTHER_RUN);
        assertThat(learned.confirmed().factors()).isEqualTo(learned.factors());
    }

    /** The same engine, whose coolant falls as it rose: no car that the model knows, whatever its values are. */
    @Test
    void aLogThatNoCarCouldHaveMadeIsNotBelieved() {
        double hottestK = STANDING.rows().stream()
                .mapToDouble(DriveLog.Row::coolantK)
                .max()
                .orElseThrow();
        double coldestK = STANDING.rows().stream()
                .mapToDouble(DriveLog.Row::coolantK)
                .min()
                .orElseThrow();
        List<DriveLog.Row> upsideDown = STANDING.rows().stream()
                .map(r -> new DriveLog.Row(
                        r.timeS(),
                        hottestK + coldestK - r.coolantK(),
                        r.enginePerS(),
                        r.manifoldPa(),
                        r.intakeK(),
                        r.roadMPerS()))
                .toList();
        Learned learned = RATER.learn(CAR, new DriveLog(STANDING.ambientK(), 3, upsideDown));
        assertThat(learned.unexplainedK()).isGreaterThan(Learned.CREDIBLE_UNEXPLAINED_K);
        assertThat(learned.isBeyondBelief()).isTrue();
        assertThat(RATER.learn(CAR, STANDING).unexplainedK()).isBetween(0.1, 2.0);
    }

    @Test
    void aReplayShowsEveryTenSeconds() {
        Replay replay = RATER.replay(CAR, STANDING);
        List<Replay.Moment> moments = replay.moments();
        assertThat(moments).hasSizeGreaterThan(70);
        assertThat(moments.get(3).timeS() - moments.get(2).timeS()).isEqualTo(10);
        assertThat(moments.get(3).residualK())
                .isEqualTo(moments.get(3).readK() - moments.get(3).expectedK());
    }

    @Test
    void whatALogDidNotSeeIsNotLookedAt() {
        List<DriveLog.Row> rows = STANDING.rows();
        double fromS = rows.get(100).timeS();
        List<DriveLog.Row> torn = rows.stream()
                .filter(r -> r.timeS() < fromS || r.timeS() > fromS + 90)
                .toList();
        Replay replay = RATER.replay(CAR, new DriveLog(STANDING.ambientK(), 3, torn));
        assertThat(replay.moments())
                .filteredOn(m -> m.timeS() >= fromS && m.timeS() < fromS + 140)
                .allMatch(m -> Double.isNaN(m.readK()));
        assertThat(replay.rootMeanSquareK()).isFinite();
    }

    @Test
    void aDieselsManifoldPressureSaysNothing() {
        Build diesel = CAR.change()
                .seen(BuildField.ENGINE_CLASS, EngineClass.DIESEL_TURBO)
                .seen(BuildField.FUEL, Fuel.DIESEL)
                .build();
        assertThatThrownBy(() -> RATER.replay(diesel, STANDING))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("diesel");
    }

    @Test
    void refusesWhatIsNoLog() {
        DriveLog.Row row = STANDING.rows().get(0);
        assertThatThrownBy(() -> new DriveLog(300, 3, List.of(row))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new DriveLog(300, 3, Collections.nCopies(20, row)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("log.timeStepS");
        assertThatThrownBy(() -> new DriveLog.Row(0, 300, -1, 30e3, 300, 0)).isInstanceOf(OutOfRangeException.class);
    }
}
