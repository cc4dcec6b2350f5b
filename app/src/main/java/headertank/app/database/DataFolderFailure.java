package headertank.app.database;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Turns a refused data folder into two plain sentences instead of a stack trace. */
class DataFolderFailure extends AbstractFailureAnalyzer<DataFolderException> {
    @Override
    protected FailureAnalysis analyze(Throwable rootFailure, DataFolderException cause) {
        return new FailureAnalysis(cause.getMessage(), cause.action(), cause);
    }
}
