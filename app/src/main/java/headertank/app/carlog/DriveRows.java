package headertank.app.carlog;

import headertank.app.log.file.LogLimits;
import headertank.app.log.file.LogSource;
import headertank.app.log.read.LogMapping;
import headertank.app.log.read.LogQuantity;
import headertank.app.log.read.LogReader;
import headertank.calc.evidence.DriveLog;
import headertank.calc.quantity.Range;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The moments of a log with what driving it again needs: the longest stretch, from where all of it is known, for at most ninety
 * minutes, two moments a second at most. A reading holds until there is a new one, that of the coolant does not.
 */
final class DriveRows {

    /** What a log may lack. */
    enum Missing {
        COOLANT,
        ENGINE_SPEED,
        MANIFOLD_PRESSURE,
        ROAD_SPEED,
        AMBIENT,
        /** Less than {@link #LEAST_S} with all of it. */
        LENGTH
    }

    /** Shortest time from which anything can be learned [s]; modelling choice. */
    static final double LEAST_S = 120;

    /** Longest that is driven again [s]; modelling choice: a page waits for it. */
    static final double MOST_S = 5400;

    /** How much warmer than the air around the car the intake air is taken to be where no column tells it [K]; modelling choice. */
    static final double INTAKE_WARMER_K = 10;

    private static final double STEP_S = 0.45;
    private static final double SAID_SIGMA_K = 1;
    /** A thermometer of the car; see {@link DriveLog}. */
    private static final double MEASURED_SIGMA_K = 2;

    private static final double ATMOSPHERE_PA = 101_325;
    private static final Range COOLANT_K = Range.of(223.15, 433.15);
    private static final Range ENGINE_PER_S = Range.of(0, 300);
    private static final Range MANIFOLD_PA = Range.of(0, 6e5);
    private static final Range INTAKE_K = Range.of(223.15, 433.15);
    private static final Range ROAD_M_PER_S = Range.of(0, 110);
    private static final Range AMBIENT_K = Range.of(233.15, 328.15);

    private final LogReading reading;
    private final boolean intakeTold;
    private Stretch now = new Stretch();
    private Stretch longest = new Stretch();
    private int number = -1;
    private double barometerPa = ATMOSPHERE_PA;

    private DriveRows(LogReading reading) {
        this.reading = reading;
        this.intakeTold = reading.mapping().of(LogQuantity.INTAKE_AIR).isPresent();
    }

    /** @throws headertank.app.log.file.LogRefused when the text is no log */
    static DriveRows read(LogSource log, LogReading reading) throws IOException {
        DriveRows rows = new DriveRows(reading);
        LogReader.read(log, reading.mapping(), LogLimits.USUAL, rows::take);
        rows.end();
        return rows;
    }

    private void take(int stretch, double timeS, double[] si) {
        if (stretch != number) {
            end();
            number = stretch;
        }
        double baro = si[LogQuantity.BAROMETER.ordinal()];
        barometerPa = Double.isNaN(baro) ? barometerPa : baro;
        double boost = si[LogQuantity.BOOST.ordinal()] + barometerPa;
        double manifold = si[LogQuantity.MANIFOLD_PRESSURE.ordinal()];
        now.coolantK = held(COOLANT_K, si[LogQuantity.COOLANT.ordinal()], now.coolantK);
        now.enginePerS = held(ENGINE_PER_S, si[LogQuantity.ENGINE_SPEED.ordinal()] / (2 * Math.PI), now.enginePerS);
        now.manifoldPa = held(MANIFOLD_PA, Double.isNaN(manifold) ? boost : manifold, now.manifoldPa);
        now.intakeK = held(INTAKE_K, si[LogQuantity.INTAKE_AIR.ordinal()], now.intakeK);
        now.roadMPerS = held(ROAD_M_PER_S, si[LogQuantity.ROAD_SPEED.ordinal()], now.roadMPerS);
        double ambient = si[LogQuantity.AMBIENT.ordinal()];
        if (AMBIENT_K.contains(ambient)) {
            now.ambientsK.add(ambient);
        }
        now.moment(timeS, intakeTold);
    }

    private static double held(Range allowed, double read, double before) {
        return allowed.contains(read) ? read : before;
    }

    private void end() {
        if (now.lengthS() > longest.lengthS() || longest.rows.isEmpty()) {
            longest = now;
        }
        now = new Stretch();
    }

    /** How long what is driven again lasts [s]. */
    double lengthS() {
        return longest.lengthS();
    }

    /** Whether no column tells the air that the engine takes in. */
    boolean intakeAssumed() {
        return !intakeTold;
    }

    /** What stands in the way of driving it again. */
    List<Missing> missing() {
        List<Missing> missing = new ArrayList<>();
        LogMapping mapping = reading.mapping();
        boolean pressure = mapping.of(LogQuantity.MANIFOLD_PRESSURE).isPresent()
                || mapping.of(LogQuantity.BOOST).isPresent();
        add(missing, mapping.of(LogQuantity.COOLANT).isEmpty(), Missing.COOLANT);
        add(missing, mapping.of(LogQuantity.ENGINE_SPEED).isEmpty(), Missing.ENGINE_SPEED);
        add(missing, !pressure, Missing.MANIFOLD_PRESSURE);
        add(missing, mapping.of(LogQuantity.ROAD_SPEED).isEmpty(), Missing.ROAD_SPEED);
        if (missing.isEmpty()) {
            add(missing, lengthS() < LEAST_S, Missing.LENGTH);
        }
        add(missing, ambientK().isEmpty(), Missing.AMBIENT);
        return missing;
    }

    private static void add(List<Missing> all, boolean is, Missing what) {
        if (is) {
            all.add(what);
        }
    }

    /** What somebody said, else the median of the column. */
    private Optional<Double> ambientK() {
        if (reading.ambientK().isPresent()) {
            return Optional.of(reading.ambientK().getAsDouble());
        }
        List<Double> sorted = longest.ambientsK.stream().sorted().toList();
        return sorted.isEmpty() ? Optional.empty() : Optional.of(sorted.get(sorted.size() / 2));
    }

    /** Empty where anything is missing. */
    Optional<DriveLog> log() {
        if (!missing().isEmpty()) {
            return Optional.empty();
        }
        double ambient = ambientK().orElseThrow();
        double sigma = reading.ambientK().isPresent() ? SAID_SIGMA_K : MEASURED_SIGMA_K;
        List<DriveLog.Row> rows = longest.rows.stream()
                .map(r -> r.told(ambient + INTAKE_WARMER_K))
                .toList();
        return Optional.of(new DriveLog(ambient, sigma, rows));
    }

    /** A moment whose intake air nobody may know. */
    private record Row(
            double timeS, double coolantK, double enginePerS, double manifoldPa, double intakeK, double roadMPerS) {

        DriveLog.Row told(double otherwiseIntakeK) {
            double intake = Double.isNaN(intakeK) ? otherwiseIntakeK : intakeK;
            return new DriveLog.Row(timeS, coolantK, enginePerS, manifoldPa, intake, roadMPerS);
        }
    }

    /** One stretch, its last readings held. */
    private static final class Stretch {

        private final List<Row> rows = new ArrayList<>();
        private final List<Double> ambientsK = new ArrayList<>();
        private double coolantK = Double.NaN;
        private double enginePerS = Double.NaN;
        private double manifoldPa = Double.NaN;
        private double intakeK = Double.NaN;
        private double roadMPerS = Double.NaN;

        double lengthS() {
            return rows.isEmpty()
                    ? 0
                    : rows.get(rows.size() - 1).timeS() - rows.get(0).timeS();
        }

        void moment(double timeS, boolean intakeTold) {
            boolean known = !Double.isNaN(enginePerS + manifoldPa + roadMPerS)
                    && !(intakeTold && Double.isNaN(intakeK))
                    && !(rows.isEmpty() && Double.isNaN(coolantK));
            boolean due = rows.isEmpty()
                    || timeS - rows.get(rows.size() - 1).timeS() >= STEP_S
                            && timeS - rows.get(0).timeS() <= MOST_S;
            if (known && due) {
                rows.add(new Row(timeS, coolantK, enginePerS, manifoldPa, intakeK, roadMPerS));
                coolantK = Double.NaN;
            }
        }
    }
}
