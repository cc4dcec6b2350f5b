package headertank.app.check.stored;

/**
 * A stored check as a whole.
 *
 * @param inputSha256 hash of what went in, hexadecimal
 * @param resultSha256 hash of what came out, hexadecimal
 */
public record StoredCheck(CheckLine line, CheckResult result, String inputSha256, String resultSha256) {

    /** Whether somebody has signed. */
    public boolean isSigned() {
        return line.signOff().isPresent();
    }
}
