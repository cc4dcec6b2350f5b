package headertank.app.database;

import java.util.Map;

/** What a feature adds to the lines printed when the service is ready: name to value, in order. */
@FunctionalInterface
public interface StartLines {
    Map<String, String> lines();
}
