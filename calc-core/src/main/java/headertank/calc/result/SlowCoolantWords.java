package headertank.calc.result;

import headertank.calc.quantity.Physics;
import headertank.calc.result.SlowCoolant.FlowLine;
import headertank.calc.result.SlowCoolant.PassLine;
import headertank.calc.result.SlowCoolant.Thermostatted;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The answer of {@link SlowCoolant} in plain words, with the car's figures in it. */
final class SlowCoolantWords {

    private static final String HEAT =
            "More coolant flow never costs this radiator heat. At %.0f L/min it gives off %.1f kW"
                    + " and the coolant leaves %.1f K cooler; at %.0f L/min it gives off %.1f kW and the coolant leaves %.1f K cooler."
                    + " The drop per pass shrinks because the same heat is taken from more coolant, not because less heat is taken.";

    private static final String FLAT =
            "The gain flattens: from %.0f to %.0f L/min heat rises by %.1f %%. By then the air decides, so"
                    + " a larger pump is not the way to a cooler car either.";

    private static final String PASSES =
            "At %.0f %% of the pump's rated speed one, two and three passes give off %.1f, %.1f and"
                    + " %.1f kW with %.0f, %.0f and %.0f L/min. At one and the same flow they would give off %.1f, %.1f and %.1f kW.";

    private static final String PASSES_GAIN =
            "Here %s win: the coolant runs faster in each tube, and that is worth more than what the pump loses.";

    private static final String PASSES_LOSE =
            "Here a single pass wins: each further pass multiplies the pressure drop, and the pump brings less.";

    private static final String LIGHT =
            "Leave the thermostat in. At light load on a day of 5 C the coolant settles at %s with it"
                    + " and at %s without.%s";

    private static final String TOO_COLD =
            " That is too cold: oil stays thick and wet, fuel washes down the bores, and the"
                    + " clearances are those of a cold engine.";

    private static final String WARMING =
            "Warming up at 50 C of coolant on that day, %.1f kW are left to warm the engine with the"
                    + " thermostat and %.1f kW without; the less is left, the longer it takes, and below zero it never gets there.";

    private static final String BYPASS =
            "With the thermostat open its foot shuts the bypass and %.0f %% of the pump's flow goes"
                    + " past the radiator; with the thermostat gone and the bypass left open it is %.0f %%, and the radiator sees"
                    + " %.0f L/min in place of %.0f.";

    private static final String PRESSURE =
            "A thermostat, or a plate in its place, holds back pressure in the block: %.0f kPa at the"
                    + " head's outlet against %.0f kPa without, so the coolant there boils at %.1f C against %.1f C:"
                    + " %.1f K more before the hottest spots make steam.";

    /** Coolant below which an engine counts as cold, 65 C [K]; common practice, no source. */
    private static final double TOO_COLD_K = 338.15;

    private SlowCoolantWords() {}

    static List<String> of(SlowCoolant s) {
        List<String> words = new ArrayList<>();
        List<FlowLine> table = s.againstFlow();
        FlowLine slow = table.get(2);
        FlowLine middle = table.get(5);
        FlowLine fast = table.get(table.size() - 1);
        words.add(text(
                HEAT,
                litres(slow.flowM3PerS()),
                slow.heatW() / 1000,
                slow.coolantDropK(),
                litres(fast.flowM3PerS()),
                fast.heatW() / 1000,
                fast.coolantDropK()));
        words.add(text(
                FLAT,
                litres(middle.flowM3PerS()),
                litres(fast.flowM3PerS()),
                100 * (fast.heatW() / Math.max(1, middle.heatW()) - 1)));
        for (int i = 0; i + 2 < s.passes().size(); i += 3) {
            words.add(
                    passes(s.passes().get(i), s.passes().get(i + 1), s.passes().get(i + 2)));
        }
        Thermostatted in = s.withThermostat();
        Thermostatted out = s.withoutThermostat();
        words.add(text(
                LIGHT,
                celsius(in.lightLoadK()),
                celsius(out.lightLoadK()),
                out.lightLoadK() < TOO_COLD_K ? TOO_COLD : ""));
        words.add(text(WARMING, in.warmingW() / 1000, out.warmingW() / 1000));
        words.add(text(
                BYPASS,
                100 * in.bypassShare(),
                100 * out.bypassShare(),
                litres(out.radiatorM3PerS()),
                litres(in.radiatorM3PerS())));
        words.add(text(
                PRESSURE,
                in.headPressurePa() / 1000,
                out.headPressurePa() / 1000,
                Physics.celsius(in.headBoilingK()),
                Physics.celsius(out.headBoilingK()),
                in.headBoilingK() - out.headBoilingK()));
        return List.copyOf(words);
    }

    private static String passes(PassLine one, PassLine two, PassLine three) {
        String figures = text(
                PASSES,
                100 * one.pumpSpeedShare(),
                one.heatW() / 1000,
                two.heatW() / 1000,
                three.heatW() / 1000,
                litres(one.flowM3PerS()),
                litres(two.flowM3PerS()),
                litres(three.flowM3PerS()),
                one.heatAtFlowOfOneW() / 1000,
                two.heatAtFlowOfOneW() / 1000,
                three.heatAtFlowOfOneW() / 1000);
        String best = three.heatW() > two.heatW() ? "three passes" : "two passes";
        boolean gain = Math.max(two.heatW(), three.heatW()) > one.heatW();
        return figures + " " + (gain ? text(PASSES_GAIN, best) : PASSES_LOSE);
    }

    private static String celsius(double kelvin) {
        return Double.isNaN(kelvin) ? "no steady temperature" : text("%.0f C", Physics.celsius(kelvin));
    }

    private static double litres(double m3PerS) {
        return 60_000 * m3PerS;
    }

    private static String text(String form, Object... values) {
        return String.format(Locale.ROOT, form, values);
    }
}
