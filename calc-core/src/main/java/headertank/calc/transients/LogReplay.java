package headertank.calc.transients;

import headertank.calc.rating.Plant;
import java.util.Arrays;
import java.util.List;

/**
 * The lumped car of {@link LumpedCar} driven by what a log says: its own engine speed, manifold pressure and road speed, its own
 * thermostat and fans. Classic Runge-Kutta steps of a second, or of a part of it where coolant changes faster: of a step that
 * is longer than 2.8 over a rate nothing is left. Deterministic.
 */
public final class LogReplay {

    private static final double STEP_S = 1;
    private static final double FASTEST_PER_S = 1;
    private static final double OF_A_RATE = 1.4;

    /** Coolant no warmer than this above the air is that of a car that has stood for long [K]. */
    private static final double COLD_K = 12;

    private static final double OIL_SHARE = 0.9;

    private final double stepS;
    private final Plant plant;
    private final LumpedCar car;
    private final Fans fans;
    private final LogPlace place;
    private final double[] y = new double[LumpedCar.STATES];
    private final double[] next = new double[LumpedCar.STATES];
    private final double[][] k = new double[4][LumpedCar.STATES];

    /**
     * What a car would have shown and given.
     *
     * @param shownK its gauge, mean of each block [K]
     * @param coolantW heat of the warm engine into its coolant in each stretch [W]
     */
    public record Answer(double[] shownK, double[] coolantW) {}

    /**
     * What is not known of the day of a log.
     *
     * @param load what its heat is over that of the car's other logs [-]
     * @param radiatorShare where the radiator stands at a warm start, 0 at the air, 1 at the coolant [-]
     * @param breezeMPerS wind that meets the car along its length, whether it stands or not [m/s]
     */
    public record Day(double load, double radiatorShare, double breezeMPerS) {}

    private LogReplay(Plant plant, double ambientK, Day day, double stepS) {
        this.stepS = stepS;
        this.plant = plant;
        this.fans = new Fans(plant, plant.control(), false);
        this.car = new LumpedCar(plant, Masses.of(plant), fans, true, FASTEST_PER_S);
        this.place = new LogPlace(plant, ambientK, day);
    }

    /**
     * @param plant the car, its air that of the log's day
     * @param log the log
     * @param ambientK air around the car [K]
     * @param day what is not known of the log's day
     * @return what it would have shown and given
     */
    public static Answer of(Plant plant, LogStretches log, double ambientK, Day day) {
        return of(plant, log, ambientK, day, STEP_S);
    }

    /** The same in other steps, at most a stretch long [s]. */
    public static Answer of(Plant plant, LogStretches log, double ambientK, Day day, double stepS) {
        return new LogReplay(plant, ambientK, day, stepS).run(log, day.radiatorShare());
    }

    private Answer run(LogStretches log, double radiatorShare) {
        start(log.firstK() - plant.factors().gaugeOffsetK(), radiatorShare);
        List<LogStretches.Stretch> stretches = log.stretches();
        int gauge = LumpedCar.SENSOR + plant.gaugeSensor().ordinal();
        double[] shown = new double[stretches.size() / LogStretches.ofABlock()];
        double[] given = new double[stretches.size()];
        double offset = plant.factors().gaugeOffsetK();
        double time = 0;
        for (int i = 0; i < stretches.size(); i++) {
            place.to(stretches.get(i));
            given[i] = place.warmCoolantW();
            car.enter(place, time);
            for (double end = time + LogStretches.stretchS(); time < end - 1e-9; time += stepS) {
                fans.look(time, y[car.fanSensor()], true);
                int parts = (int) Math.max(1, Math.ceil(stepS * car.fastestPerS(time, y) / OF_A_RATE));
                for (int part = 0; part < parts; part++) {
                    step(time + part * stepS / parts, stepS / parts);
                }
            }
            shown[i / LogStretches.ofABlock()] += (y[gauge] + offset) / LogStretches.ofABlock();
        }
        return new Answer(shown, given);
    }

    private void start(double coolantK, double radiatorShare) {
        double ambient = place.ambientK;
        double above = coolantK - ambient;
        boolean cold = above < COLD_K;
        double behind = cold ? coolantK : ambient + radiatorShare * above;
        Arrays.fill(y, 0, LumpedCar.IN_J, coolantK);
        y[LumpedCar.FRICTION] = 0;
        y[LumpedCar.RADIATOR] = behind;
        y[LumpedCar.CORE] = behind;
        y[LumpedCar.OIL] = cold ? coolantK : ambient + OIL_SHARE * above;
        y[LumpedCar.HOOD] = cold ? coolantK : ambient + 0.5 * above;
    }

    private void step(double t, double h) {
        car.derivatives(t, y, k[0]);
        ahead(0.5 * h, k[0]);
        car.derivatives(t + 0.5 * h, next, k[1]);
        ahead(0.5 * h, k[1]);
        car.derivatives(t + 0.5 * h, next, k[2]);
        ahead(h, k[2]);
        car.derivatives(t + h, next, k[3]);
        for (int i = 0; i < LumpedCar.IN_J; i++) {
            y[i] += h / 6 * (k[0][i] + 2 * k[1][i] + 2 * k[2][i] + k[3][i]);
        }
    }

    private void ahead(double h, double[] slope) {
        for (int i = 0; i < LumpedCar.IN_J; i++) {
            next[i] = y[i] + h * slope[i];
        }
    }
}
