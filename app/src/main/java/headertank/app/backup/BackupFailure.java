package headertank.app.backup;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Turns a backup that is not brought back into two plain sentences instead of a stack trace. */
class BackupFailure extends AbstractFailureAnalyzer<BackupException> {
    @Override
    protected FailureAnalysis analyze(Throwable rootFailure, BackupException cause) {
        return new FailureAnalysis(cause.getMessage(), cause.action(), cause);
    }
}
