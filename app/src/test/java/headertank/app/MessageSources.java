package headertank.app;

import headertank.app.language.ModelWords;
import headertank.app.unit.UnitSystem;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.springframework.context.MessageSource;

/** The texts as the service has them, for tests of other packages. */
public final class MessageSources {

    private MessageSources() {}

    public static MessageSource all() {
        try {
            return new MessageFiles().messageSource();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What calc-core says, for a metric shop. */
    public static ModelWords modelWords() {
        return new ModelWords(all(), () -> UnitSystem.METRIC);
    }
}
