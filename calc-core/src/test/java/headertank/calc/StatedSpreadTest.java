package headertank.calc;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.choice.FinKind;
import headertank.calc.duty.Duty;
import headertank.calc.duty.StandardDuties;
import headertank.calc.quantity.Note;
import headertank.calc.quantity.Stated;
import headertank.calc.quantity.TubeRegime;
import headertank.calc.radiator.LouveredFins;
import headertank.calc.radiator.PlainFins;
import headertank.calc.result.Distribution;
import headertank.calc.result.PointRating;
import headertank.calc.verdict.DutyOutcome;
import java.util.List;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

/** What a correlation says of itself reaches the verdict: its stated spread moves the band of the margin. */
class StatedSpreadTest {

    private static final int SAMPLES = 1024;

    @Test
    void louvredFinsHeatTransfer() {
        assertMoves(LouveredFins.class, 0.08, 0.40, LouvredCar.class, 1.15);
    }

    @Test
    void louvredFinsFriction() {
        assertMoves(LouveredFins.class, 0.12, 0.80, LouvredCar.class, 1.05);
    }

    @Test
    void plainFins() {
        assertMoves(PlainFins.class, 0.25, 0.75, PlainCar.class, 1.3);
    }

    @Test
    void turbulentTubes() {
        assertMoves(TubeRegime.class, 0.08, 0.80, LouvredCar.class, 1.01);
    }

    @Test
    void tubesInTransition() {
        assertMoves(TubeRegime.class, 0.25, 0.80, CarInTransition.class, 1.05);
    }

    @Test
    void plainFinsAreLessWellKnownThanLouvredOnes() {
        PointRating plain = Rater.standard().at(new PlainCar().build, StandardDuties.TRACK.point("laps"));
        PointRating louvred = Rater.standard().at(new LouvredCar().build, StandardDuties.TRACK.point("laps"));
        assertThat(plain.radiatorSpread().airSide())
                .isGreaterThan(1.5 * louvred.radiatorSpread().airSide());
    }

    @Test
    void slowAirIsNotedAndWidensWhereItIsSlowAndNowhereElse() {
        Rating rating =
                Rater.standard().preview(Build.forCar(CarClass.MODERN_STREET).build(), List.of(StandardDuties.STREET));
        DutyOutcome street = rating.duty("street").outcome();
        PointRating jam = street.point("jam");
        PointRating motorway = street.point("motorway");
        assertThat(jam.notes())
                .filteredOn(n -> n.field().equals("louverReynolds"))
                .singleElement()
                .satisfies(n -> {
                    assertThat(n.value()).isLessThan(100);
                    assertThat(n.action()).isEqualTo(n.value() < 60 ? Note.Action.CLAMPED : Note.Action.WIDENED);
                });
        assertThat(motorway.notes()).extracting(Note::field).doesNotContain("louverReynolds");
        assertThat(jam.radiatorSpread().airSide())
                .isGreaterThan(1.2 * motorway.radiatorSpread().airSide());
        assertThat(rating.notes()).extracting(Note::field).contains("louverReynolds");
    }

    private static void assertMoves(
            Class<?> correlation,
            double stated,
            double instead,
            Class<? extends Supplier<double[]>> car,
            double atLeast) {
        double[] as = CoreWithOneFigureChanged.ask(correlation, stated, stated, car);
        double[] wider = CoreWithOneFigureChanged.ask(correlation, stated, instead, car);
        assertThat(wider[0]).as("the margin itself stays").isEqualTo(as[0]);
        assertThat(wider[1]).as("half width of the band, was %s", as[1]).isGreaterThan(atLeast * as[1]);
    }

    /** Asks the rater that its own class loader has: margin and half width of the band. */
    abstract static class Asked implements Supplier<double[]> {
        final Build build;
        private final Duty duty;

        Asked(Build build, Duty duty) {
            this.build = build;
            this.duty = duty;
        }

        @Override
        public double[] get() {
            DutyOutcome o = CoreWithOneFigureChanged.rater()
                    .rate(build, List.of(duty), SAMPLES)
                    .duty(duty.id())
                    .outcome();
            Distribution band = o.marginSpread().orElseThrow();
            return new double[] {o.coolantMarginK(), 0.5 * (band.high() - band.low())};
        }
    }

    /** Louvred fins, turbulent tubes. */
    public static final class LouvredCar extends Asked {
        public LouvredCar() {
            super(Builds.track(), StandardDuties.TRACK);
        }
    }

    /** The same with plain fins. */
    public static final class PlainCar extends Asked {
        public PlainCar() {
            super(
                    Builds.track()
                            .change()
                            .seen(BuildField.FIN_KIND, FinKind.PLAIN)
                            .build(),
                    StandardDuties.TRACK);
        }
    }

    /** A pump so weak that the coolant is neither smooth nor well mixed in the tubes. */
    public static final class CarInTransition extends Asked {
        public CarInTransition() {
            super(
                    Builds.track()
                            .change()
                            .set(BuildField.PUMP_FLOW, Stated.measured(2.0e-3))
                            .build(),
                    StandardDuties.TRACK);
        }
    }
}
