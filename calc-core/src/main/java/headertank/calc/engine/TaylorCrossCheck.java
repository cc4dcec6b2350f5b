package headertank.calc.engine;

import headertank.calc.quantity.Note;
import headertank.calc.quantity.NoteText;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;
import java.util.List;
import org.hipparchus.util.FastMath;

/**
 * A second way to the heat through the chamber walls, to compare with {@link EngineHeat}: the correlation of Taylor and
 * Toong, {@code Nu = 10.4 Re^0.75} with {@code Re = m b/(A_p mu)} per cylinder and {@code Q = Nu (k/b) A_p N (T_g - T_c)}
 * (C. F. Taylor, <i>The Internal Combustion Engine in Theory and Practice</i>, 1985; from memory). It gives coolant and
 * oil together and is no part of the expected answer. Where the two differ by more than 40 % the rating widens the spread of the
 * heat, up to 1.5 times where they differ by 60 % (modelling choice).
 *
 * <p>T_g is that of a charge without excess air, so nothing is compared on a diesel, whose idling charge has six times the air that it
 * burns: there the correlation would give more heat than the fuel has. Nor can it ask for more than work and exhaust leave at all
 * ({@link EngineHeat#mostToCoolantAndOilW}), which it does at idle; only that much is compared (derived).
 *
 * @param reynolds Re [-]
 * @param heatW Q, heat through the walls [W]
 */
public record TaylorCrossCheck(double reynolds, double heatW) {

    private static final double GAS_VISCOSITY_PA_S = 3.9e-5;
    private static final double GAS_CONDUCTIVITY_W_PER_M_K = 0.062;
    private static final double MEAN_GAS_K = 890.0;
    private static final Range AGREEMENT = Range.of(-0.4, 0.4);

    /** Difference beyond the agreement at which the widening is whole [-]. */
    private static final double DISAGREEMENT = 0.2;

    private static final double WIDENED = 1.5;

    /**
     * @param boreM bore b [m], 0.02 to 0.3
     * @param cylinders number of cylinders N, 1 to 16
     * @param chargeKgPerS air and fuel of the whole engine [kg/s], 0 to 5
     * @param coolantK coolant temperature T_c [K], 250 to 450
     * @return Reynolds number and heat
     */
    public static TaylorCrossCheck of(double boreM, int cylinders, double chargeKgPerS, double coolantK) {
        OutOfRangeException.require("boreM", boreM, Range.of(0.02, 0.3));
        OutOfRangeException.require("cylinders", cylinders, Range.of(1, 16));
        OutOfRangeException.require("chargeKgPerS", chargeKgPerS, Range.of(0, 5));
        OutOfRangeException.require("coolantK", coolantK, Range.of(250, 450));
        double piston = Math.PI / 4 * boreM * boreM;
        double re = chargeKgPerS / cylinders * boreM / (piston * GAS_VISCOSITY_PA_S);
        double nu = 10.4 * FastMath.pow(re, 0.75);
        return new TaylorCrossCheck(
                re, nu * GAS_CONDUCTIVITY_W_PER_M_K / boreM * piston * cylinders * (MEAN_GAS_K - coolantK));
    }

    /** The check for an engine with bore equal to stroke, at the charge flow of a balance. */
    public static TaylorCrossCheck of(EngineSpec spec, HeatSplit split, double coolantK) {
        return of(spec.squareBoreM(), spec.cylinders(), split.chargeMassKgPerS(), coolantK);
    }

    /**
     * @param engine the engine
     * @param split its balance at an operating point
     * @param coolantK coolant temperature [K], 250 to 450
     * @return a note that widens the spread of the heat when the two ways differ by more than 40 %, else nothing
     */
    public static List<Note> notes(EngineHeat engine, HeatSplit split, double coolantK) {
        return engine.spec().engineClass().isDiesel()
                ? List.of()
                : of(engine.spec(), split, coolantK).notes(split, engine.mostToCoolantAndOilW(split));
    }

    /**
     * @param possibleW what coolant and oil can take at most [W]
     * @return this heat, as far as it is possible, over coolant plus oil heat of the balance, less 1 [-]
     */
    double difference(HeatSplit split, double possibleW) {
        return Math.min(heatW, possibleW) / (split.coolantW() + split.oilW()) - 1;
    }

    List<Note> notes(HeatSplit split, double possibleW) {
        double d = difference(split, possibleW);
        double beyond = Math.abs(d) - AGREEMENT.max();
        return AGREEMENT.contains(d)
                ? List.of()
                : List.of(new Note(
                        "wallHeat",
                        d,
                        AGREEMENT,
                        Note.Action.WIDENED,
                        1 + (WIDENED - 1) * Math.min(1, beyond / DISAGREEMENT),
                        NoteText.WALL_HEAT_DISAGREES.with()));
    }
}
