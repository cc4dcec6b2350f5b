package headertank.calc.transients;

import headertank.calc.carspec.BuildField;
import headertank.calc.choice.FanDrive;
import headertank.calc.control.FanControlSpec;
import headertank.calc.control.FanStages;
import headertank.calc.rating.Plant;

/** The electric fans of a run: their control's stage, since when they turn, and how they are started. */
final class Fans {

    /** How long the starting current of a relay lasts [s]; common practice, no source: 1 to 2 s. */
    static final double INRUSH_S = 1.5;

    private final FanControlSpec spec;
    private final boolean canTurn;
    private final double startFactor;
    private int stage;
    private double sinceS = Double.NEGATIVE_INFINITY;
    private boolean allowed = true;
    private int starts;

    /**
     * @param car the car with the fans that are left
     * @param spec their control
     * @param noneTurns whether a fault keeps all of them from turning
     */
    Fans(Plant car, FanControlSpec spec, boolean noneTurns) {
        this.spec = spec;
        this.canTurn = car.fanDrive() == FanDrive.ELECTRIC && !noneTurns;
        this.startFactor = spec.softStartS() > 0 ? 1 : startFactor(car);
    }

    private static double startFactor(Plant car) {
        double running = car.resolved().value(BuildField.FAN_CURRENT);
        double starting = car.resolved().value(BuildField.FAN_START_CURRENT);
        return starting > running ? starting / running : 1;
    }

    /** A new phase begins: says whether fans may turn in it, and lets the control look at its sensor. */
    void look(double timeS, double sensedK, boolean may) {
        allowed = may;
        go(timeS, canTurn && may ? FanStages.stage(spec, stage, sensedK) : 0);
    }

    /** The reading has reached an edge of this stage. */
    void step(double timeS, boolean up) {
        go(timeS, stage + (up ? 1 : -1));
    }

    private void go(double timeS, int next) {
        if (next > 0 && stage == 0) {
            starts++;
            sinceS = timeS;
        }
        stage = next;
    }

    double upK() {
        return canTurn && allowed ? FanStages.upK(spec, stage) : Double.POSITIVE_INFINITY;
    }

    double downK() {
        return canTurn && allowed ? FanStages.downK(spec, stage) : Double.NEGATIVE_INFINITY;
    }

    /** @return duty with the soft start [-] */
    double duty(double timeS, double sensedK) {
        if (stage == 0) {
            return 0;
        }
        double soft = spec.softStartS();
        double share = timeS - sinceS < soft ? (timeS - sinceS) / soft : 1;
        return share * FanStages.duty(spec, stage, sensedK);
    }

    /** @return factor on the running current at this moment [-] */
    double inrush(double timeS) {
        return stage > 0 && timeS - sinceS < INRUSH_S ? startFactor : 1;
    }

    /** @return the next moment at which soft start or starting current end; infinite when there is none [s] */
    double nextKinkS(double timeS) {
        if (stage == 0) {
            return Double.POSITIVE_INFINITY;
        }
        double kink = sinceS + (spec.softStartS() > 0 ? spec.softStartS() : INRUSH_S);
        return kink > timeS + 1e-6 ? kink : Double.POSITIVE_INFINITY;
    }

    int starts() {
        return starts;
    }
}
