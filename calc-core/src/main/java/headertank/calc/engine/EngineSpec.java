package headertank.calc.engine;

import headertank.calc.fluid.Fuel;
import headertank.calc.quantity.InputException;
import headertank.calc.quantity.InputProblem;
import headertank.calc.quantity.InputText;
import headertank.calc.quantity.MessageArgument;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;
import java.util.List;
import java.util.OptionalDouble;
import org.hipparchus.util.FastMath;

/**
 * One engine. Values outside the ranges given here are refused with {@link OutOfRangeException}; a diesel engine on a
 * spark-ignition fuel, or the reverse, with {@link InputException}.
 *
 * @param engineClass kind of engine
 * @param displacementM3 swept volume of all cylinders [m3], 5e-5 to 0.03
 * @param cylinders number of cylinders (chambers of a rotary), 1 to 16
 * @param ratedPowerW highest brake power [W], 1 kW to 2 MW
 * @param ratedSpeedPerS crankshaft speed at rated power [rev/s], 15 to 300
 * @param idleSpeedPerS crankshaft speed at idle [rev/s], 5 to 50 and below the rated speed
 * @param fuel what it burns
 * @param measuredBrakeEfficiency measured or published brake power over fuel power at rated power [-], 0.10 to 0.50;
 *     replaces the class's gross efficiency. From brake specific consumption b [kg/J]: 1/(b LHV)
 */
public record EngineSpec(
        EngineClass engineClass,
        double displacementM3,
        int cylinders,
        double ratedPowerW,
        double ratedSpeedPerS,
        double idleSpeedPerS,
        Fuel fuel,
        OptionalDouble measuredBrakeEfficiency) {

    public EngineSpec {
        OutOfRangeException.require("displacementM3", displacementM3, Range.of(5e-5, 0.03));
        OutOfRangeException.require("cylinders", cylinders, Range.of(1, 16));
        OutOfRangeException.require("ratedPowerW", ratedPowerW, Range.of(1e3, 2e6));
        OutOfRangeException.require("ratedSpeedPerS", ratedSpeedPerS, Range.of(15, 300));
        OutOfRangeException.require("idleSpeedPerS", idleSpeedPerS, Range.of(5, Math.min(50, ratedSpeedPerS)));
        if (measuredBrakeEfficiency.isPresent()) {
            OutOfRangeException.require(
                    "measuredBrakeEfficiency", measuredBrakeEfficiency.getAsDouble(), Range.of(0.10, 0.50));
        }
        if (engineClass.isDiesel() != fuel.isDiesel()) {
            throw new InputException(List.of(InputProblem.of(
                    "fuel.burnt",
                    new MessageArgument.OptionName("fuel.burnt", fuel.name()),
                    engineClass.isDiesel() ? InputText.DIESEL_NEEDED.with() : InputText.DIESEL_REFUSED.with(),
                    InputProblem.Code.CONTRADICTION)));
        }
    }

    /** An engine without a measured efficiency. */
    public static EngineSpec of(
            EngineClass engineClass,
            double displacementM3,
            int cylinders,
            double ratedPowerW,
            double ratedSpeedPerS,
            double idleSpeedPerS,
            Fuel fuel) {
        return new EngineSpec(
                engineClass,
                displacementM3,
                cylinders,
                ratedPowerW,
                ratedSpeedPerS,
                idleSpeedPerS,
                fuel,
                OptionalDouble.empty());
    }

    /** @return bore of one cylinder when bore and stroke are equal [m]: {@code (4 V/(pi N))^(1/3)}; modelling choice */
    public double squareBoreM() {
        return FastMath.cbrt(4 * displacementM3 / (Math.PI * cylinders));
    }
}
