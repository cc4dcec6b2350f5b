package headertank.app.carlog;

import headertank.app.log.file.LogLimits;
import headertank.app.log.file.LogSource;
import headertank.app.log.read.LogMapping;
import headertank.app.log.read.LogReader;
import headertank.app.log.read.LogSummary;
import java.io.IOException;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A log that is about to be kept.
 *
 * @param text what is kept of it
 * @param reading how it is read
 */
record LogToKeep(String name, String text, LogReading reading, long rows, long badRows, double lengthS, int leftOut) {

    /**
     * @param kept the text as it is kept
     * @param mapping of its columns
     * @throws headertank.app.log.file.LogRefused when what is kept is no log
     */
    static LogToKeep of(String name, KeptText kept, LogMapping mapping, OptionalDouble ambientK, String drove)
            throws IOException {
        LogSummary summary = LogReader.survey(kept.source(), mapping.time(), LogLimits.USUAL);
        return new LogToKeep(
                name,
                kept.text(),
                new LogReading(mapping, ambientK, drove),
                summary.rows(),
                summary.badRows(),
                summary.lengthS(),
                kept.leftOut().size());
    }

    /** @return whether nothing is missing for driving the log again, in the order in which it is asked for */
    List<DriveRows.Missing> missing() throws IOException {
        return DriveRows.read(LogSource.of(text), reading).missing();
    }
}
