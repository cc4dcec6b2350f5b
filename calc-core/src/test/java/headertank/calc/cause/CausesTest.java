package headertank.calc.cause;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.Builds;
import headertank.calc.Rater;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.choice.FanDrive;
import headertank.calc.choice.SensorPlacement;
import headertank.calc.duty.Duty;
import headertank.calc.duty.StandardDuties;
import headertank.calc.quantity.Message;
import headertank.calc.quantity.Physics;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.ServiceLoader;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Causes through the door: what was seen goes in, a ranking comes out. */
class CausesTest {

    private static final Rater RATER = Rater.standard();
    private static final Duty STREET = StandardDuties.STREET;

    @Test
    void everyCauseIsRankedOrTheCarCannotHaveIt() {
        List<String> installed = ServiceLoader.load(Cause.class).stream()
                .map(c -> c.get().id())
                .sorted()
                .toList();
        assertThat(installed).hasSize(26);
        Ranking drift = RATER.causes(Builds.drift(), in(StandardDuties.DRIFT, "queue"));
        assertThat(drift.causes()).extracting(Ranking.Ranked::id).containsExactlyInAnyOrderElementsOf(installed);
        Ranking road = RATER.causes(Builds.road(), in(STREET, "jam"));
        assertThat(road.causes()).extracting(Ranking.Ranked::id).doesNotContain("one-fan-out");
        Build fanless =
                Builds.road().change().seen(BuildField.FAN_DRIVE, FanDrive.NONE).build();
        assertThat(RATER.causes(fanless, in(STREET, "motorway")).causes())
                .extracting(Ranking.Ranked::id)
                .noneMatch(id -> id.contains("fan-") || id.contains("fans-"));
    }

    @Test
    void posteriorsAndChancesSumToOne() {
        Ranking r = RATER.causes(Builds.road(), in(STREET, "jam", Observation.STEAM_SEEN));
        assertThat(r.causes().stream().mapToDouble(Ranking.Ranked::posterior).sum())
                .isCloseTo(1, within(1e-9));
        assertThat(r.answers().stream().mapToDouble(Ranking.Answer::posterior).sum())
                .isCloseTo(1, within(1e-9));
        assertThat(r.causes())
                .extracting(Ranking.Ranked::posterior)
                .isSortedAccordingTo((a, b) -> Double.compare(b, a));
        assertThat(r.next())
                .allSatisfy(t -> assertThat(t.outcomes().stream()
                                .mapToDouble(Ranking.Meaning::chance)
                                .sum())
                        .isCloseTo(1, within(1e-9)))
                .extracting(Ranking.NextTest::bitsPerMinute)
                .isSortedAccordingTo((a, b) -> Double.compare(b, a));
    }

    /** A mechanic's own answers to what a driver says: each is first, with the driver's words and nothing else. */
    @Test
    void plainCasesAreFirst() {
        first("fans-out", STREET, "jam", Observation.FAN_SILENT, Observation.COOLED_AT_SPEED);
        first("thermostat-shut", STREET, "hill", Observation.LOWER_HOSE_COLD, Observation.UPPER_HOSE_COLD);
        first(
                "air-in-coolant",
                STREET,
                "jam",
                Observation.HEATER_COLD,
                Observation.NEEDLE_JUMPED,
                Observation.LOSS_SOME);
        first(
                "tubes-fouled",
                STREET,
                "hill",
                Observation.CORE_FACE_PATCHY,
                Observation.CORE_LOOK_CLEAR,
                Observation.STARTED_OVER_WEEKS);
        first("cap-weak", STREET, "hill", Observation.NEEDLE_NORMAL, Observation.STEAM_SEEN, Observation.CAP_LEAKS);
        first(
                "gauge-off",
                STREET,
                "hill",
                Observation.NEEDLE_RED,
                Observation.LAMP_OFF,
                Observation.STEAM_NONE,
                Observation.SECOND_GAUGE_LESS);
    }

    /** Where the wind turns the fans, fans that stand make no car hot: what they say depends on what it was doing. */
    @Test
    void aFanMattersInAJamAndHardlyOnTheMotorway() {
        assertThat(posterior("fans-out", in(STREET, "jam")))
                .isGreaterThan(3 * posterior("fans-out", in(STREET, "motorway")));
    }

    @Test
    void aReadingMovesTheRanking() {
        Sighting words = in(STREET, "jam");
        Sighting cool = reading(words, 92);
        Sighting hot = reading(words, 121);
        assertThat(posterior("nothing-wrong", cool)).isGreaterThan(posterior("nothing-wrong", hot));
        assertThat(posterior("fans-out", hot)).isGreaterThan(posterior("fans-out", cool));
        assertThat(RATER.causes(Builds.road(), hot).causes())
                .filteredOn(c -> c.id().equals("fans-out"))
                .singleElement()
                .satisfies(c -> assertThat(c.clues())
                        .extracting(Ranking.Clue::what)
                        .extracting(Message::code)
                        .containsExactly("cause.reading"));
    }

    /** A sensor elsewhere than the car's gauge says nothing of the gauge. */
    @Test
    void anotherSensorSaysNothingOfTheGauge() {
        Resolved car = RATER.resolve(Builds.road());
        Sighting own = reading(in(STREET, "jam"), 121);
        Sighting other =
                new Sighting(STREET, "jam", own.ambientK(), own.shownK(), Optional.of(SensorPlacement.HEAD), Set.of());
        assertThat(car.token(BuildField.GAUGE_SENSOR)).isNotEmpty();
        assertThat(posterior("gauge-off", other)).isLessThan(posterior("gauge-off", own));
    }

    @Test
    void theSameSightingGivesTheSameRanking() {
        Sighting seen = reading(in(STREET, "jam", Observation.FAN_LOUD), 118);
        assertThat(RATER.causes(Builds.road(), seen)).isEqualTo(RATER.causes(Builds.road(), seen));
    }

    /** The shares of the answers to a question sum to one, with every cause and without. */
    @Test
    void sharesSumToOne() {
        List<Cause> causes = ServiceLoader.load(Cause.class).stream()
                .map(ServiceLoader.Provider::get)
                .toList();
        for (Inquiry q : Inquiry.values()) {
            List<Observation> answers = Observation.of(q);
            assertThat(answers).as(q.name()).hasSizeGreaterThan(1);
            if (!answers.get(0).followsHeat()) {
                assertThat(answers.stream().mapToDouble(o -> o.share(List.of())).sum())
                        .as(q.name())
                        .isCloseTo(1, within(1e-9));
                causes.forEach(c -> assertThat(answers.stream()
                                .mapToDouble(o -> o.share(c.signs()))
                                .peek(s -> assertThat(s).isBetween(1e-4, 1.0))
                                .sum())
                        .as(q + " with " + c.id())
                        .isCloseTo(1, within(1e-9)));
            }
        }
    }

    /** Whatever a test is for, some cause answers it otherwise than the rest. */
    @Test
    void everyTestTellsSomething() {
        Map<Inquiry, Boolean> told = new EnumMap<>(Inquiry.class);
        ServiceLoader.load(Cause.class)
                .forEach(c -> c.signs().forEach(s -> told.put(s.what().inquiry(), true)));
        for (Inquiry q : Inquiry.values()) {
            if (!Observation.of(q).get(0).followsHeat()) {
                assertThat(told).containsKey(q);
            }
        }
    }

    @Test
    void whatCannotBeSeenIsRefused() {
        assertThatThrownBy(() -> in(STREET, "jam", Observation.STEAM_SEEN, Observation.STEAM_NONE))
                .hasMessageContaining("STEAM has two answers");
        assertThatThrownBy(() -> in(STREET, "laps")).hasMessageContaining("laps");
        assertThatThrownBy(() -> reading(in(STREET, "jam"), 400)).hasMessageContaining("shownK");
        assertThatThrownBy(() -> new Chance(Observation.GAS_FOUND, 1)).hasMessageContaining("GAS_FOUND");
        assertThatThrownBy(() -> RATER.suspecting(List.of()).causes(Builds.road(), in(STREET, "jam")))
                .hasMessageContaining("none of the causes");
    }

    /** A plug-in's cause takes its place among the others. */
    @Test
    void aCauseOfSomebodyElseIsRanked() {
        Rater more = RATER.suspecting(List.of(new NothingWrong(), new FansOut(), new Gremlin()));
        Ranking r = more.causes(Builds.road(), in(STREET, "jam", Observation.ENGINE_ROUGH));
        assertThat(r.causes()).hasSize(3);
        assertThat(r.causes().get(0).id()).isEqualTo("gremlin");
    }

    private static final class Gremlin implements Cause {
        @Override
        public String id() {
            return "gremlin";
        }

        @Override
        public String source() {
            return "invented";
        }

        @Override
        public Message name() {
            return Message.plain("A gremlin");
        }

        @Override
        public double prior(Resolved car, Sighting seen) {
            return 60;
        }

        @Override
        public Fault on(Fault car, double severity) {
            return car.heated(1.6);
        }

        @Override
        public List<Chance> signs() {
            return List.of(new Chance(Observation.ENGINE_ROUGH, 0.9));
        }
    }

    private static void first(String id, Duty duty, String point, Observation... observed) {
        assertThat(RATER.causes(Builds.road(), in(duty, point, observed))
                        .causes()
                        .get(0)
                        .id())
                .as(point + " " + List.of(observed))
                .isEqualTo(id);
    }

    private static double posterior(String id, Sighting seen) {
        return RATER.causes(Builds.road(), seen).causes().stream()
                .filter(c -> c.id().equals(id))
                .findFirst()
                .orElseThrow()
                .posterior();
    }

    private static Sighting in(Duty duty, String point, Observation... observed) {
        return new Sighting(
                duty,
                point,
                OptionalDouble.of(Physics.kelvin(28)),
                OptionalDouble.empty(),
                Optional.empty(),
                Set.of(observed));
    }

    private static Sighting reading(Sighting words, double celsius) {
        return new Sighting(
                words.duty(),
                words.pointId(),
                words.ambientK(),
                OptionalDouble.of(Physics.kelvin(celsius)),
                Optional.empty(),
                words.observed());
    }
}
