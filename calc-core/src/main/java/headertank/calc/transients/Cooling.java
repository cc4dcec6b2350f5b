package headertank.calc.transients;

/**
 * How a car is cooled at a state of coolant, thermostat and fans. Looked up once with {@link #at}, then read with the accessors until
 * the next time.
 */
abstract class Cooling {

    static final int QUANTITIES = 9;

    final double[] out = new double[QUANTITIES];
    final double ambientK;

    Cooling(double ambientK) {
        this.ambientK = ambientK;
    }

    /**
     * Looks the state up.
     *
     * @param hotK coolant in the block [K]
     * @param lift thermostat lift [-]
     * @param duty duty of electric fans [-]
     */
    abstract void at(double hotK, double lift, double duty);

    /** The car settles in this state; a table may solve it exactly and correct itself around it. */
    abstract void settleAt(double hotK, double lift, double duty);

    /** @return heat capacity rate of the coolant through the radiator [W/K] */
    double capacityRateWPerK() {
        return out[0];
    }

    /** @return -C ln(1 - e), e radiator heat over C times the difference of the inlets [W/K] */
    double conductanceWPerK() {
        return out[1];
    }

    /** @return air entering the core [K] */
    double airInK() {
        return ambientK + out[2];
    }

    /** @return air under the hood where it only mixes what passes the core [K] */
    double underHoodK() {
        return ambientK + out[3];
    }

    double radiatorM3PerS() {
        return out[4];
    }

    /** @return duty of electric fans, slip of a clutch fan [-] */
    double fanDuty() {
        return out[5];
    }

    double airSideShare() {
        return out[6];
    }

    /** @return heat capacity rate of the air through the core [W/K] */
    double airCapacityWPerK() {
        return out[7];
    }

    double metalConductanceWPerK() {
        return out[8];
    }
}
