package headertank.calc.duty;

import java.util.ArrayList;
import java.util.List;

/** One operating point out of all stretches of a log that are alike. */
final class LogPoint {

    /** Alternator, steering pump and gearbox at idle; a log does not show them: modelling choice [W]. */
    private static final double IDLE_ACCESSORIES_W = 2500;

    /** Spread of the heat that a log of speed and load leaves open: modelling choice [-]. */
    private static final double LOAD_SIGMA = 0.1;

    /** Shares are kept to this, so that a person can read and edit them [-]. */
    private static final double STEP = 1e-4;

    private static final double SLOWEST_ENGINE = 0.05;

    private LogPoint() {}

    static OperatingPoint of(LoggedLap.Doing doing, List<LogStretch> stretches, LoggedLap.PointNames names) {
        LogStretch all = new LogStretch();
        stretches.forEach(all::add);
        double speedMPerS = doing == LoggedLap.Doing.OFF ? 0 : Math.rint(36 * all.meanSpeedMPerS()) / 10 / 3.6;
        Demand demand =
                switch (doing) {
                    case OFF -> new Demand.EngineOff(0, false);
                    case IDLE -> new Demand.Idle(IDLE_ACCESSORIES_W, 0, round(all.meanEngineShare()));
                    case PULL, ALONG -> mix(all);
                };
        String name = names.name(doing, speedMPerS);
        return new OperatingPoint(stretches.get(0).pointId(), name, speedMPerS, 0, 0, demand, LOAD_SIGMA);
    }

    private static Demand.Mix mix(LogStretch all) {
        List<Demand.Mode> modes = new ArrayList<>();
        int widest = 0;
        double sum = 0;
        for (int i = 0; i < LogStretch.MODES; i++) {
            double share = round(all.modeS[i] / all.seconds());
            if (share > 0) {
                double power = i == 0 ? 0 : round(all.modePowerS[i] / all.modeS[i]);
                modes.add(new Demand.Mode(share, Math.min(1, power), engine(all.modeEngineS[i] / all.modeS[i])));
                sum += share;
                widest = share > modes.get(widest).timeShare() ? modes.size() - 1 : widest;
            }
        }
        Demand.Mode w = modes.get(widest);
        modes.set(widest, new Demand.Mode(round(w.timeShare() + 1 - sum), w.powerShare(), w.speedShare()));
        return new Demand.Mix(modes, engine(all.meanEngineShare()));
    }

    private static double engine(double share) {
        return Math.max(SLOWEST_ENGINE, Math.min(1.2, round(share)));
    }

    private static double round(double share) {
        return Math.rint(share / STEP) / Math.rint(1 / STEP);
    }
}
