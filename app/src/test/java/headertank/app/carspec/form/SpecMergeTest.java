package headertank.app.carspec.form;

import static headertank.calc.carspec.BuildField.CAP_PRESSURE;
import static headertank.calc.carspec.BuildField.CORE_DEPTH;
import static headertank.calc.carspec.BuildField.CORE_HEIGHT;
import static headertank.calc.carspec.BuildField.CORE_WIDTH;
import static headertank.calc.carspec.BuildField.FAN_MOUNTING;
import static headertank.calc.quantity.Provenance.GUESSED;
import static headertank.calc.quantity.Provenance.MEASURED;
import static org.assertj.core.api.Assertions.assertThat;

import headertank.app.carspec.Spec;
import headertank.app.carspec.SpecBuilder;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Two people's changes joined. */
class SpecMergeTest {

    private final Spec parent = SpecBuilder.of(CarClass.TRACK, "track")
            .set(CORE_WIDTH, "600 mm", GUESSED)
            .set(CORE_HEIGHT, "400 mm", GUESSED)
            .set(CAP_PRESSURE, "1.1 bar", MEASURED)
            .spec();

    private SpecMerge merge(SpecBuilder theirs, SpecBuilder mine) {
        return SpecMerge.of(Optional.of(parent), theirs.spec(), mine.spec());
    }

    private SpecBuilder changed() {
        return SpecBuilder.from(parent);
    }

    @Test
    void eachOnesOwnChangesAreTaken() {
        SpecMerge merge = merge(
                changed().set(CORE_WIDTH, "620 mm", MEASURED).seen(FAN_MOUNTING, "PUSHING"),
                changed().set(CORE_HEIGHT, "410 mm", MEASURED).unknown(CAP_PRESSURE));
        assertThat(merge.contested()).isEmpty();
        assertThat(merge.spec())
                .isEqualTo(changed()
                        .set(CORE_WIDTH, "620 mm", MEASURED)
                        .seen(FAN_MOUNTING, "PUSHING")
                        .set(CORE_HEIGHT, "410 mm", MEASURED)
                        .unknown(CAP_PRESSURE)
                        .spec());
    }

    @Test
    void whereBothChangedSomethingMineStandsAndIsMarked() {
        SpecMerge merge =
                merge(changed().set(CORE_WIDTH, "620 mm", MEASURED), changed().set(CORE_WIDTH, "640 mm", MEASURED));
        assertThat(merge.contested()).containsExactly(CORE_WIDTH);
        assertThat(merge.spec().typed()).containsEntry(CORE_WIDTH, "640 mm");
    }

    @Test
    void removingWhatTheyChangedIsContestedToo() {
        SpecMerge merge =
                merge(changed().set(CORE_WIDTH, "620 mm", MEASURED), changed().unknown(CORE_WIDTH));
        assertThat(merge.contested()).containsExactly(CORE_WIDTH);
        assertThat(merge.spec().build().entry(CORE_WIDTH)).isEmpty();
    }

    @Test
    void theSameChangeByBothIsNoContest() {
        SpecMerge merge =
                merge(changed().set(CORE_DEPTH, "48 mm", MEASURED), changed().set(CORE_DEPTH, "48 mm", MEASURED));
        assertThat(merge.contested()).isEmpty();
        assertThat(merge.spec().build().entry(CORE_DEPTH)).isPresent();
    }

    @Test
    void dutiesAreJoinedOneByOne() {
        SpecMerge merge = merge(changed().duties("track", "street"), changed().duties("drift"));
        assertThat(merge.spec().dutyIds()).containsExactly("drift", "street");
    }

    @Test
    void twoFirstSpecsOfOneCarAreJoined() {
        SpecMerge merge = SpecMerge.of(
                Optional.empty(),
                SpecBuilder.of(CarClass.TRACK, "track")
                        .set(CORE_WIDTH, "620 mm", MEASURED)
                        .spec(),
                SpecBuilder.of(CarClass.DRIFT, "drift")
                        .set(CORE_HEIGHT, "400 mm", MEASURED)
                        .spec());
        assertThat(merge.classContested()).isTrue();
        assertThat(merge.contested()).isEmpty();
        assertThat(merge.spec().build().carClass()).isEqualTo(CarClass.DRIFT);
        assertThat(merge.spec().build().entries().keySet()).containsExactlyInAnyOrder(CORE_WIDTH, CORE_HEIGHT);
        assertThat(merge.spec().dutyIds()).containsExactly("drift", "track");
    }

    @Test
    void nothingOfEitherIsLost() {
        Spec theirs = changed()
                .set(CORE_WIDTH, "620 mm", MEASURED)
                .seen(FAN_MOUNTING, "PUSHING")
                .spec();
        Spec mine = changed()
                .set(CORE_WIDTH, "640 mm", MEASURED)
                .set(CORE_DEPTH, "48 mm", MEASURED)
                .spec();
        SpecMerge merge = SpecMerge.of(Optional.of(parent), theirs, mine);
        for (BuildField f : BuildField.values()) {
            boolean changedByThem =
                    !theirs.build().entry(f).equals(parent.build().entry(f));
            boolean kept = merge.spec().build().entry(f).equals(theirs.build().entry(f));
            assertThat(!changedByThem || kept || merge.contested().contains(f))
                    .as(f.key())
                    .isTrue();
            boolean changedByMe = !mine.build().entry(f).equals(parent.build().entry(f));
            assertThat(!changedByMe
                            || merge.spec().build().entry(f).equals(mine.build().entry(f)))
                    .as(f.key())
                    .isTrue();
        }
    }
}
