package headertank.app.fuzz;

import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.classic.spi.ThrowableProxyUtil;
import ch.qos.logback.core.AppenderBase;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.atomic.AtomicLong;
import org.slf4j.LoggerFactory;

/** Counts what is written to the log, with all traces. */
final class LogGrowth extends AppenderBase<ILoggingEvent> implements AutoCloseable {

    /** Time, level and id of a line [bytes]. */
    private static final int HEAD = 30;

    private final Logger root = (Logger) LoggerFactory.getLogger(org.slf4j.Logger.ROOT_LOGGER_NAME);
    private final AtomicLong bytes = new AtomicLong();
    private volatile String last = "";

    static LogGrowth watch() {
        LogGrowth growth = new LogGrowth();
        growth.setContext(growth.root.getLoggerContext());
        growth.start();
        growth.root.addAppender(growth);
        return growth;
    }

    @Override
    protected void append(ILoggingEvent event) {
        String text = event.getFormattedMessage();
        if (event.getThrowableProxy() != null) {
            text += ThrowableProxyUtil.asString(event.getThrowableProxy());
        }
        last = text;
        bytes.addAndGet(HEAD + text.getBytes(StandardCharsets.UTF_8).length);
    }

    long bytes() {
        return bytes.get();
    }

    String last() {
        return last.length() > 600 ? last.substring(0, 600) : last;
    }

    @Override
    public void close() {
        root.detachAppender(this);
    }
}
