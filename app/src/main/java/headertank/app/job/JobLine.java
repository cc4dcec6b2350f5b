package headertank.app.job;

import headertank.app.gate.Stage;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * A job in a list.
 *
 * @param asked what is to be done, in words
 * @param revisionNumber newest revision of the car
 * @param checkId newest check of that revision
 */
public record JobLine(
        long id,
        long carId,
        String plate,
        String carTitle,
        String customerName,
        String asked,
        LocalDate promisedOn,
        Stage stage,
        Optional<Integer> revisionNumber,
        Optional<Long> checkId) {

    /** Days past the promised date; 0 when it is not late or is closed. */
    public long daysLate(LocalDate today) {
        return stage.isClosed() ? 0 : Math.max(0, ChronoUnit.DAYS.between(promisedOn, today));
    }

    /** Whether it is promised for this very day and still open. */
    public boolean isDue(LocalDate today) {
        return !stage.isClosed() && promisedOn.equals(today);
    }

    /** The page on which the next step is done. */
    public String nextPath() {
        String car = "/cars/" + carId;
        return switch (stage) {
            case TO_DESCRIBE -> car + "/spec";
            case TO_RATE -> car + "/revisions/" + revisionNumber.orElse(1) + "/check";
            case SENT_BACK, FAULT_OPEN, TO_GO_THROUGH ->
                checkId.map(c -> "/checks/" + c + "/handover").orElse(car);
            case TO_SIGN, STAYS -> checkId.map(c -> "/checks/" + c).orElse(car);
            case READY, PAUSED, HANDED_OVER, CALLED_OFF -> "/jobs/" + id;
        };
    }
}
