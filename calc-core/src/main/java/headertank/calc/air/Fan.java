package headertank.calc.air;

import headertank.calc.quantity.InputException;
import headertank.calc.quantity.InputProblem;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * All the fans of a radiator as one pressure rise against mass flow: like fans, unlike fans side by side (they share the
 * pressure and add their flows), or two sets one behind the other (they share the flow and keep 0.85 of the sum of their
 * rises; modelling choice). Pulling fans see the air behind the core, pushing fans the air before it. The order of fans
 * side by side changes nothing. Formula and sources: {@link FanSpec}.
 */
public final class Fan {

    /** Voltage at which electric fans are stated [V]. */
    public static final double REFERENCE_V = 13;

    private static final double STACKED_SHARE = 0.85;
    private static final Comparator<FanSpec> ORDER = Comparator.comparingDouble(FanSpec::freeFlowM3PerS)
            .thenComparingDouble(FanSpec::shutOffPa)
            .thenComparingDouble(FanSpec::diameterM)
            .thenComparingDouble(FanSpec::hubDiameterM)
            .thenComparingDouble(FanSpec::shape)
            .thenComparingDouble(FanSpec::windmillingLoss)
            .thenComparingDouble(FanSpec::lockedLoss)
            .thenComparingInt(FanSpec::count);

    private final FanCurve[] curves;
    private final boolean pushing;
    private final int count;
    private final Fan behind;

    private Fan(List<FanSpec> specs, boolean locked, Fan behind) {
        this.curves =
                specs.stream().sorted(ORDER).map(s -> new FanCurve(s, locked)).toArray(FanCurve[]::new);
        this.pushing = specs.get(0).pushing();
        this.count = specs.stream().mapToInt(FanSpec::count).sum();
        this.behind = behind;
    }

    /** One set of like fans. */
    public static Fan of(FanSpec spec) {
        return sideBySide(List.of(spec));
    }

    /**
     * @param specs at least one set; all pulling or all pushing
     * @return the fans side by side over one shroud
     * @throws InputException when the list is empty or mixes pulling and pushing fans
     */
    public static Fan sideBySide(List<FanSpec> specs) {
        if (specs.isEmpty()) {
            throw new InputException(
                    List.of(new InputProblem("fans", "", "at least one fan", InputProblem.Code.MISSING)));
        }
        if (specs.stream().map(FanSpec::pushing).distinct().count() > 1) {
            throw new InputException(List.of(new InputProblem(
                    "fans.pushing",
                    "mixed",
                    "all pulling or all pushing side by side",
                    InputProblem.Code.CONTRADICTION)));
        }
        return new Fan(List.copyOf(specs), false, null);
    }

    /**
     * @param front one set, not itself stacked
     * @param back the other set, not itself stacked
     * @return both sets in series, for example a pusher before and a puller behind the core
     */
    public static Fan stacked(Fan front, Fan back) {
        if (front.behind != null || back.behind != null) {
            throw new InputException(List.of(
                    new InputProblem("fans.stacked", "more than two", "two sets", InputProblem.Code.CONTRADICTION)));
        }
        return new Fan(front.specs(), false, back);
    }

    /** @return the same fans with their blades locked: no rise, and more drop than when they windmill */
    public Fan locked() {
        return new Fan(specs(), true, behind == null ? null : behind.locked());
    }

    /**
     * Speed of a brushed electric fan over its reference speed, {@code duty voltage/13}; sigma 5 %, modelling choice.
     *
     * @param duty share of full drive, 0 to 1 [-]
     * @param voltageV at the fan's terminals [V], 0 to 60
     */
    public static double speedFactor(double duty, double voltageV) {
        OutOfRangeException.require("duty", duty, Range.of(0, 1));
        OutOfRangeException.require("voltageV", voltageV, Range.of(0, 60));
        return duty * voltageV / REFERENCE_V;
    }

    /** @return number of fans side by side in the first set */
    public int count() {
        return count;
    }

    /** @return the sets of the first stage, in the order of computation */
    public List<FanSpec> specs() {
        return Arrays.stream(curves).map(FanCurve::spec).toList();
    }

    /**
     * Rise of the first stage alone, in air of one density.
     *
     * @param flowM3PerS flow of all fans together [m3/s]; negative is reverse flow
     * @param densityKgPerM3 air density at the fans [kg/m3]
     * @param speedFactor fan speed over reference speed [-]; 0 without power
     * @return pressure rise [Pa], negative when the fans resist
     */
    public double risePa(double flowM3PerS, double densityKgPerM3, double speedFactor) {
        if (curves.length == 1) {
            return curves[0].risePa(flowM3PerS / count, densityKgPerM3, speedFactor);
        }
        return commonRisePa(flowM3PerS, densityKgPerM3, speedFactor);
    }

    /**
     * Rise of all stages at a mass flow.
     *
     * @param massKgPerS air through the fans [kg/s]
     * @param coldKgPerM3 density before the core [kg/m3]
     * @param hotKgPerM3 density behind the core [kg/m3]
     * @param speedFactor fan speed over reference speed [-]
     * @return pressure rise [Pa]
     */
    double riseAtMassPa(double massKgPerS, double coldKgPerM3, double hotKgPerM3, double speedFactor) {
        double rho = density(coldKgPerM3, hotKgPerM3);
        double rise = risePa(massKgPerS / rho, rho, speedFactor);
        if (behind == null) {
            return rise;
        }
        double sum = rise + behind.riseAtMassPa(massKgPerS, coldKgPerM3, hotKgPerM3, speedFactor);
        return sum > 0 ? STACKED_SHARE * sum : sum;
    }

    /** @return density of the air that the first stage sees [kg/m3] */
    double density(double coldKgPerM3, double hotKgPerM3) {
        return pushing ? coldKgPerM3 : hotKgPerM3;
    }

    /** Rise at which the flows of unlike fans add up to the given flow; the sum falls strictly with the rise. */
    private double commonRisePa(double flow, double rho, double speedFactor) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (FanCurve c : curves) {
            double even = c.risePa(flow / count, rho, speedFactor);
            low = Math.min(low, even);
            high = Math.max(high, even);
        }
        if (!(high > low)) {
            return low;
        }
        return BracketedRoot.falling(p -> sum(p, rho, speedFactor) - flow, low, high, 1e-13);
    }

    private double sum(double rise, double rho, double speedFactor) {
        double q = 0;
        for (FanCurve c : curves) {
            q += c.spec().count() * c.flowM3PerS(rise, rho, speedFactor);
        }
        return q;
    }
}
