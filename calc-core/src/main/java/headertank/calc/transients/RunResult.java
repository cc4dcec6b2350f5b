package headertank.calc.transients;

import java.util.List;

/**
 * What a schedule did to a car.
 *
 * @param peakCoolantK hottest coolant in the block, bulk [K]
 * @param peakCoolantAtS when [s]
 * @param peakOilK hottest oil [K]
 * @param lowestBoilingMarginK smallest distance of the block's coolant from boiling at the cap [K]
 * @param secondsAboveLimit time with the coolant above its limit [s]
 * @param firstAboveLimitS when it first was, NaN if never [s]
 * @param fanAmpereHours charge that the fans took [Ah]
 * @param batteryAmpereHours charge that the alternator could not give [Ah]
 * @param fanStarts how often the fans started
 * @param storedJ energy stored at the end minus at the start [J]
 * @param energyErrorShare energy in minus out minus stored, over energy in [-]
 * @param trace the run, thinned for drawing
 */
public record RunResult(
        double peakCoolantK,
        double peakCoolantAtS,
        double peakOilK,
        double lowestBoilingMarginK,
        double secondsAboveLimit,
        double firstAboveLimitS,
        double fanAmpereHours,
        double batteryAmpereHours,
        int fanStarts,
        double storedJ,
        double energyErrorShare,
        List<Sample> trace) {

    public RunResult {
        trace = List.copyOf(trace);
    }

    /**
     * One moment of a run.
     *
     * @param timeS time since the start [s]
     * @param pointId operating point of the phase
     * @param coolantK coolant in the block [K]
     * @param oilK oil [K]
     * @param gaugeK what the gauge sensor reads [K]
     * @param fanDuty duty of the fans [-]
     * @param fanCurrentA current of all electric fans [A]
     */
    public record Sample(
            double timeS,
            String pointId,
            double coolantK,
            double oilK,
            double gaugeK,
            double fanDuty,
            double fanCurrentA) {}
}
