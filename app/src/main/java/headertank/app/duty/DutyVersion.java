package headertank.app.duty;

import headertank.app.stored.Sha256;
import headertank.calc.duty.Duty;
import headertank.calc.duty.DutySource;
import headertank.calc.duty.ScheduleCsv;
import headertank.calc.quantity.InputException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A version of a shop's own duty.
 *
 * @param number from 1, rising with each change and each switching
 * @param active whether specs may name it
 */
record DutyVersion(long id, String dutyId, int number, String csv, boolean active, String author, Instant savedAt) {

    /** Empty when the text is not read any more by this version of the program. */
    Optional<Duty> duty() {
        try {
            return Optional.of(ScheduleCsv.parse(csv));
        } catch (InputException noLongerRead) {
            return Optional.empty();
        }
    }

    /** One source for each duty, so that a check names the version that it rated and no other. */
    static DutySource source(Duty duty, DutyVersion version) {
        return new ShopSource(
                "shop-duty-" + duty.id(), version.number() + "-" + Sha256.brief(version.csv()), duty.source(), duty);
    }

    private record ShopSource(String id, String version, String source, Duty duty) implements DutySource {
        @Override
        public List<Duty> duties() {
            return List.of(duty);
        }
    }
}
