package headertank.calc.result;

import headertank.calc.quantity.FigureKind;
import headertank.calc.quantity.Message;
import headertank.calc.quantity.MessageArgument;
import headertank.calc.quantity.SiFigure;
import headertank.calc.result.SlowCoolant.FlowLine;
import headertank.calc.result.SlowCoolant.PassLine;
import headertank.calc.result.SlowCoolant.Thermostatted;
import java.util.ArrayList;
import java.util.List;

/** The answer of {@link SlowCoolant}, paragraph by paragraph, with the car's figures. */
final class SlowCoolantWords {

    /** Coolant below which an engine counts as cold, 65 C [K]; common practice, no source. */
    private static final double TOO_COLD_K = 338.15;

    private SlowCoolantWords() {}

    static List<Message> of(SlowCoolant s) {
        List<Message> words = new ArrayList<>();
        List<FlowLine> table = s.againstFlow();
        FlowLine slow = table.get(2);
        FlowLine middle = table.get(5);
        FlowLine fast = table.get(table.size() - 1);
        words.add(SlowCoolantText.MORE_FLOW_MORE_HEAT.with(
                SiFigure.liquidFlow(slow.flowM3PerS()),
                SiFigure.power(slow.heatW()),
                SiFigure.difference(slow.coolantDropK()),
                SiFigure.liquidFlow(fast.flowM3PerS()),
                SiFigure.power(fast.heatW()),
                SiFigure.difference(fast.coolantDropK())));
        words.add(SlowCoolantText.GAIN_FLATTENS.with(
                SiFigure.liquidFlow(middle.flowM3PerS()),
                SiFigure.liquidFlow(fast.flowM3PerS()),
                SiFigure.share(fast.heatW() / Math.max(1, middle.heatW()) - 1)));
        for (int i = 0; i + 2 < s.passes().size(); i += 3) {
            words.add(
                    passes(s.passes().get(i), s.passes().get(i + 1), s.passes().get(i + 2)));
        }
        Thermostatted in = s.withThermostat();
        Thermostatted out = s.withoutThermostat();
        SlowCoolantText light =
                out.lightLoadK() < TOO_COLD_K ? SlowCoolantText.TOO_COLD : SlowCoolantText.LEAVE_THERMOSTAT;
        words.add(light.with(
                SiFigure.temperature(SlowCoolant.COLD_DAY_K), settled(in.lightLoadK()), settled(out.lightLoadK())));
        words.add(SlowCoolantText.WARMING.with(
                SiFigure.temperature(SlowCoolant.WARMING_K),
                SiFigure.power(in.warmingW()),
                SiFigure.power(out.warmingW())));
        words.add(SlowCoolantText.BYPASS.with(
                SiFigure.share(in.bypassShare()),
                SiFigure.share(out.bypassShare()),
                SiFigure.liquidFlow(out.radiatorM3PerS()),
                SiFigure.liquidFlow(in.radiatorM3PerS())));
        words.add(SlowCoolantText.PRESSURE.with(
                new SiFigure(in.headPressurePa(), FigureKind.PRESSURE_ABSOLUTE),
                new SiFigure(out.headPressurePa(), FigureKind.PRESSURE_ABSOLUTE),
                SiFigure.temperature(in.headBoilingK()),
                SiFigure.temperature(out.headBoilingK()),
                SiFigure.difference(in.headBoilingK() - out.headBoilingK())));
        return List.copyOf(words);
    }

    private static Message passes(PassLine one, PassLine two, PassLine three) {
        boolean gain = Math.max(two.heatW(), three.heatW()) > one.heatW();
        SlowCoolantText best = !gain
                ? SlowCoolantText.ONE_PASS_WINS
                : three.heatW() > two.heatW() ? SlowCoolantText.THREE_PASSES_WIN : SlowCoolantText.TWO_PASSES_WIN;
        return SlowCoolantText.PASSES.with(
                SiFigure.share(one.pumpSpeedShare()),
                SiFigure.power(one.heatW()),
                SiFigure.power(two.heatW()),
                SiFigure.power(three.heatW()),
                SiFigure.liquidFlow(one.flowM3PerS()),
                SiFigure.liquidFlow(two.flowM3PerS()),
                SiFigure.liquidFlow(three.flowM3PerS()),
                SiFigure.power(one.heatAtFlowOfOneW()),
                SiFigure.power(two.heatAtFlowOfOneW()),
                SiFigure.power(three.heatAtFlowOfOneW()),
                best.with());
    }

    private static MessageArgument settled(double kelvin) {
        return Double.isNaN(kelvin) ? SlowCoolantText.NO_STEADY_TEMPERATURE.with() : SiFigure.temperature(kelvin);
    }
}
