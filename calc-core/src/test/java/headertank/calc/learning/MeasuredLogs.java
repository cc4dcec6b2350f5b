package headertank.calc.learning;

import headertank.calc.evidence.DriveLog;
import headertank.calc.quantity.Physics;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Logs of a real car's diagnosis port that others made (data set carOBD, open and free to everyone, cited in <i>Detecting Anomalies in the
 * Engine Coolant Sensor Using One-Class Classifiers</i>, IEEE 89th VTC 2019, 8891367), as comma-separated files with time, engine
 * speed, road speed, manifold pressure, barometer, intake air and coolant in their first columns.
 */
public final class MeasuredLogs {

    /** Warmest air in the shade that the set's place knows at a cold start, 30 deg C [K]. */
    private static final double WARMEST_K = Physics.kelvin(30);

    private static final double AMBIENT_SIGMA_K = 3;

    private MeasuredLogs() {}

    /** @return the log of this name that comes with the tests */
    public static DriveLog named(String name) {
        try (InputStream in = MeasuredLogs.class.getResourceAsStream("/logs/measured-" + name + ".csv")) {
            return parse(new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** @return the log in this file */
    public static DriveLog in(Path file) {
        try {
            return parse(Files.readAllLines(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The air around the car is the coolest that its intake met, at most 30 deg C: a guess, good to 3 K. */
    private static DriveLog parse(List<String> lines) {
        List<DriveLog.Row> rows = new ArrayList<>();
        double coolest = WARMEST_K;
        double last = Double.NEGATIVE_INFINITY;
        for (String line : lines) {
            if (line.startsWith("#") || line.startsWith("time")) {
                continue;
            }
            String[] c = line.split(",");
            double time = Double.parseDouble(c[0]);
            if (time <= last) {
                continue;
            }
            last = time;
            double intake = Physics.kelvin(Double.parseDouble(c[5]));
            coolest = Math.min(coolest, intake);
            rows.add(new DriveLog.Row(
                    time,
                    Physics.kelvin(Double.parseDouble(c[6])),
                    Double.parseDouble(c[1]) / 60,
                    1000 * Double.parseDouble(c[3]),
                    intake,
                    Double.parseDouble(c[2]) / 3.6));
        }
        return new DriveLog(coolest, AMBIENT_SIGMA_K, rows);
    }
}
