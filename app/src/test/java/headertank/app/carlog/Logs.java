package headertank.app.carlog;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.springframework.core.io.ClassPathResource;

/** Texts of logs for tests. */
public final class Logs {

    private Logs() {}

    /** A warm engine that idles for so many seconds and grows a little warmer. */
    public static String standing(int seconds) {
        return idling(seconds, 85, 85 + seconds / 60);
    }

    /** An engine that idles for so many seconds while its coolant goes from one temperature to another. */
    static String idling(int seconds, int fromC, int toC) {
        StringBuilder log = new StringBuilder("Time [s],Coolant [°C],RPM,MAP [kPa],IAT [°C],Speed [km/h]\n");
        for (int t = 0; t <= seconds; t++) {
            log.append(t)
                    .append(',')
                    .append(fromC + (toC - fromC) * t / seconds)
                    .append(",850,34,30,0\n");
        }
        return log.toString();
    }

    /** The log of the demo's drift car, eighteen minutes. */
    public static String drift() throws IOException {
        return new ClassPathResource("demo/drift-log.csv").getContentAsString(StandardCharsets.UTF_8);
    }

    /** The same log with a column more, at each row the same. */
    static String with(String log, String heading, String cell) {
        String[] lines = log.split("\n");
        StringBuilder wider = new StringBuilder();
        boolean headed = false;
        for (String line : lines) {
            if (line.startsWith("#")) {
                wider.append(line).append('\n');
            } else {
                wider.append(line).append(',').append(headed ? cell : heading).append('\n');
                headed = true;
            }
        }
        return wider.toString();
    }
}
