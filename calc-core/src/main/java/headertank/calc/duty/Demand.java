package headertank.calc.duty;

import java.util.List;

/** What an operating point asks of the engine. */
public sealed interface Demand {

    /** @return engine speed that drives pump, alternator and clutch fan, as a share of the speed at rated power [-] */
    double engineSpeedShare();

    /**
     * Idling with accessories.
     *
     * @param accessoriesW brake power for the gearbox, alternator and steering pump [W]
     * @param airConditioningW brake power for the air conditioning, on a car that has one [W]
     * @param engineSpeedShare share of the speed at rated power, or 0 for the car's own idle speed [-]
     */
    record Idle(double accessoriesW, double airConditioningW, double engineSpeedShare) implements Demand {}

    /**
     * Holding a road speed on a slope; the brake power follows from the car's mass.
     *
     * @param slope rise over run [-]
     * @param accessoriesW brake power for accessories [W]
     * @param engineSpeedShare share of the speed at rated power [-]
     */
    record Road(double slope, double accessoriesW, double engineSpeedShare) implements Demand {}

    /**
     * The engine stands: no heat comes, what is stored spreads. An electric pump and electric fans may run on.
     *
     * @param pumpRunOnShare speed of an electric pump over its full speed, 0 to 1; a belt pump stands [-]
     * @param fansRunOn whether electric fans still follow their control
     */
    record EngineOff(double pumpRunOnShare, boolean fansRunOn) implements Demand {
        public EngineOff {
            if (!(pumpRunOnShare >= 0 && pumpRunOnShare <= 1)) {
                throw new IllegalArgumentException("pumpRunOnShare = " + pumpRunOnShare + ": allowed is 0 to 1");
            }
        }

        @Override
        public double engineSpeedShare() {
            return 0;
        }
    }

    /**
     * A mix of loads that repeats faster than the coolant can follow, e.g. a lap.
     *
     * @param modes shares of time, each with its load and speed; the time shares sum to one
     * @param engineSpeedShare mean speed for pump and alternator, as a share of the speed at rated power [-]
     */
    record Mix(List<Mode> modes, double engineSpeedShare) implements Demand {
        public Mix {
            modes = List.copyOf(modes);
            double sum = modes.stream().mapToDouble(Mode::timeShare).sum();
            if (Math.abs(sum - 1) > 1e-9) {
                throw new IllegalArgumentException("the time shares of a mix must sum to 1, they sum to " + sum);
            }
        }
    }

    /**
     * One mode of a mix. Heat is concave in load, so a mix is not the same as its mean load.
     *
     * @param timeShare share of the time spent so [-]
     * @param powerShare brake power over rated power; 0 is overrun with the fuel cut [-]
     * @param speedShare engine speed over the speed at rated power [-]
     */
    record Mode(double timeShare, double powerShare, double speedShare) {
        public Mode {
            if (!(timeShare >= 0
                    && timeShare <= 1
                    && powerShare >= 0
                    && powerShare <= 1
                    && speedShare > 0
                    && speedShare <= 1.2)) {
                throw new IllegalArgumentException("a mode needs shares within 0 to 1 (speed above 0, up to 1.2): "
                        + timeShare + ", " + powerShare + ", " + speedShare);
            }
        }
    }
}
