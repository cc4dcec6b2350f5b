package headertank.calc.duty;

import headertank.calc.duty.LoggedLap.Doing;
import java.util.Locale;

/** A piece of a log under way: sums over time, and how much of it was spent how. */
final class LogStretch {

    /** Power from which a car pulls hard [-]. */
    private static final double HARD = 0.5;

    /** Below this the engine stands [-]. */
    private static final double STANDS = 0.02;

    /** Below this power and speed a car idles [-], [m/s]. */
    private static final double IDLE_POWER = 0.05;

    private static final double IDLE_SPEED_M_PER_S = 2.5;

    /** Width of a band of road speed [m/s]; 60 km/h. */
    private static final double BAND_M_PER_S = 60 / 3.6;

    /** A speed on the edge of two bands belongs to the upper one, whatever its sum was rounded to [-]. */
    private static final double ROUNDING = 1e-6;

    /** Lower edges of the modes in power: below the first one the fuel counts as cut [-]. */
    private static final double[] EDGES = {0.02, 0.25, 0.5, 0.75};

    static final int MODES = EDGES.length + 1;

    private final double[] kindS = new double[Doing.values().length];
    final double[] modeS = new double[MODES];
    final double[] modePowerS = new double[MODES];
    final double[] modeEngineS = new double[MODES];
    private double seconds;
    private double metres;
    private double powerS;
    private double engineS;

    static Doing kind(LoggedLap.Sample s) {
        if (s.engineSpeedShare() < STANDS && s.roadSpeedMPerS() < IDLE_SPEED_M_PER_S) {
            return Doing.OFF;
        }
        if (s.roadSpeedMPerS() < IDLE_SPEED_M_PER_S && s.powerShare() < IDLE_POWER) {
            return Doing.IDLE;
        }
        return s.powerShare() >= HARD ? Doing.PULL : Doing.ALONG;
    }

    void add(LoggedLap.Sample s, double forS) {
        int mode = 0;
        while (mode < EDGES.length && s.powerShare() >= EDGES[mode]) {
            mode++;
        }
        kindS[kind(s).ordinal()] += forS;
        modeS[mode] += forS;
        modePowerS[mode] += forS * s.powerShare();
        modeEngineS[mode] += forS * s.engineSpeedShare();
        seconds += forS;
        metres += forS * s.roadSpeedMPerS();
        powerS += forS * s.powerShare();
        engineS += forS * s.engineSpeedShare();
    }

    void add(LogStretch other) {
        for (int i = 0; i < kindS.length; i++) {
            kindS[i] += other.kindS[i];
        }
        for (int i = 0; i < MODES; i++) {
            modeS[i] += other.modeS[i];
            modePowerS[i] += other.modePowerS[i];
            modeEngineS[i] += other.modeEngineS[i];
        }
        seconds += other.seconds;
        metres += other.metres;
        powerS += other.powerS;
        engineS += other.engineS;
    }

    double seconds() {
        return seconds;
    }

    double meanSpeedMPerS() {
        return metres / seconds;
    }

    double meanEngineShare() {
        return engineS / seconds;
    }

    /** It idles, or the engine stands, only where that loses next to no work; else its mean power says what it is. */
    Doing kind() {
        double still = kindS[Doing.OFF.ordinal()] + kindS[Doing.IDLE.ordinal()];
        if (still > 0.5 * seconds && powerS < LoggedLap.POWER_TOLERANCE * seconds) {
            return kindS[Doing.OFF.ordinal()] > 0.5 * still ? Doing.OFF : Doing.IDLE;
        }
        return powerS >= HARD * seconds ? Doing.PULL : Doing.ALONG;
    }

    private int band() {
        return kind() == Doing.OFF || kind() == Doing.IDLE ? 0 : (int) (meanSpeedMPerS() / BAND_M_PER_S + ROUNDING);
    }

    /** Name of the point that all stretches of this kind and band share. */
    String pointId() {
        String kind = kind().name().toLowerCase(Locale.ROOT);
        return kind() == Doing.OFF || kind() == Doing.IDLE ? kind : kind + "-" + 60 * band();
    }
}
