package headertank.app.carlog;

import headertank.app.stored.CanonicalJson;
import headertank.app.stored.Sha256;
import headertank.calc.Rater;
import headertank.calc.duty.Demand;
import headertank.calc.duty.Duty;
import headertank.calc.evidence.DriveLog;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** Kept logs as evidence. */
@Component
public class LogEvidence {

    private final CarLogs logs;

    LogEvidence(CarLogs logs) {
        this.logs = logs;
    }

    /** What identifies a log and how it is read, as canonical JSON. */
    public String said(long carId, long logId) {
        KeptLog log = logs.byId(carId, logId);
        return CanonicalJson.write(Map.of(
                "format",
                1,
                "log",
                log.id(),
                "textSha256",
                log.sha256(),
                "readingSha256",
                Sha256.hex(log.reading().text()),
                "duty",
                log.reading().drove()));
    }

    public String name(long carId, long logId) {
        return logs.byId(carId, logId).name();
    }

    /**
     * The log for calc-core.
     *
     * @param rater with the duties that it may name
     * @return empty when it lacks something that driving it again needs
     */
    public Optional<DriveLog> read(long carId, long logId, Rater rater) {
        KeptLog log = logs.byId(carId, logId);
        try {
            return driven(DriveRows.read(logs.text(log), log.reading()), log, rater);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The moments of a log, driving what somebody said. */
    static Optional<DriveLog> driven(DriveRows rows, KeptLog log, Rater rater) {
        Optional<Duty> drove =
                Optional.ofNullable(rater.duties().get(log.reading().drove())).filter(LogEvidence::isDrivable);
        return rows.log().map(l -> drove.map(l::driving).orElse(l));
    }

    /** Whether a driver decides how hard a duty is. */
    static boolean isDrivable(Duty duty) {
        return duty.points().stream().anyMatch(p -> p.demand() instanceof Demand.Mix);
    }
}
