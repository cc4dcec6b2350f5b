package headertank.app.check.stored;

import java.time.Instant;
import java.util.List;

/**
 * Who answers for a check.
 *
 * @param conditions keys of the accepted conditions
 * @param sha256 hash of what was signed, hexadecimal
 */
public record SignOff(
        long signerId,
        String signerName,
        Decision decision,
        String remark,
        List<String> conditions,
        String sha256,
        Instant signedAt) {

    public SignOff {
        conditions = List.copyOf(conditions);
    }
}
