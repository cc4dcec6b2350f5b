package headertank.app.check.chart;

import headertank.app.check.figure.FigureText;
import headertank.app.check.stored.DutyResult;
import headertank.app.check.stored.WhatIf;
import headertank.app.check.stored.WhatIf.Course;
import headertank.app.check.stored.WhatIf.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What the what-ifs of one duty say, beside what the trade says, whether they agree or not.
 *
 * @param alternative the curves in words
 * @param swing the needle in words; empty when the duty never idles
 */
public record WhatIfWords(String alternative, String swing, List<Finding> findings) {

    /** A difference smaller than this is none worth naming [K]; modelling choice. */
    static final double WORTH_NAMING_K = 0.5;

    public WhatIfWords {
        findings = List.copyOf(findings);
    }

    /** One thing that was changed. */
    public record Finding(String title, String trade, String computed) {}

    static WhatIfWords of(DutyResult duty, double limitK, FigureText shown) {
        String peaks = duty.whatIfs().stream()
                .map(w -> shown.words(
                        "check.what-if.alt",
                        name(w, shown),
                        shown.temperature(w.run().peakCoolantK())))
                .collect(Collectors.joining("; "));
        List<Finding> findings = new ArrayList<>();
        Optional<WhatIf> relay = duty.whatIf(Kind.SWITCH);
        Optional<WhatIf> ramp = duty.whatIf(Kind.RAMP);
        if (relay.isPresent() && ramp.isPresent()) {
            findings.add(finding("control", control(relay.get(), ramp.get(), shown), shown));
        }
        duty.whatIfs().stream()
                .filter(WhatIf::asIs)
                .findFirst()
                .ifPresent(own -> findings.addAll(besides(own, duty, shown)));
        return new WhatIfWords(
                shown.words("check.what-if.alt.all", shown.temperature(limitK), peaks),
                relay.flatMap(r -> ramp.flatMap(p -> swing(r, p, shown))).orElse(""),
                findings);
    }

    /** What differs from the car as it stands. */
    private static List<Finding> besides(WhatIf own, DutyResult duty, FigureText shown) {
        List<Finding> findings = new ArrayList<>();
        duty.whatIf(Kind.HOSE_SENSOR)
                .ifPresent(hose -> findings.add(finding("sensor", sensor(own, hose, shown), shown)));
        duty.whatIf(Kind.BLOCK_SENSOR)
                .ifPresent(block -> findings.add(finding("sensor", sensor(block, own, shown), shown)));
        duty.whatIf(Kind.ONE_FAN_OUT).ifPresent(dead -> findings.add(finding("dead", dead(own, dead, shown), shown)));
        List<WhatIf> lower = duty.whatIfs().stream()
                .filter(w -> w.kind() == Kind.SET_5_LOWER || w.kind() == Kind.SET_10_LOWER)
                .toList();
        if (!lower.isEmpty()) {
            findings.add(finding("set", lower(own, lower, shown), shown));
        }
        return findings;
    }

    static String name(WhatIf w, FigureText shown) {
        return shown.words("check.what-if." + w.kind(), shown.temperature(w.setK()));
    }

    private static Finding finding(String key, String computed, FigureText shown) {
        return new Finding(
                shown.words("check.what-if." + key + ".title"),
                shown.words("check.what-if." + key + ".trade"),
                computed);
    }

    private static Optional<String> swing(WhatIf relay, WhatIf ramp, FigureText shown) {
        return relay.stay().flatMap(r -> ramp.stay().map(p -> {
            double less = r.swingK() - p.swingK();
            String which = Math.abs(less) < WORTH_NAMING_K ? "equal" : less > 0 ? "smaller" : "larger";
            return shown.words(
                            "check.what-if.control.swing",
                            shown.span(r.swingK()),
                            shown.span(p.swingK()),
                            shown.span(r.gaugeSwingK()),
                            shown.span(p.gaugeSwingK()))
                    + " "
                    + shown.words("check.what-if.control." + which, shown.span(Math.abs(less)));
        }));
    }

    private static String control(WhatIf relay, WhatIf ramp, FigureText shown) {
        return swing(relay, ramp, shown).orElse(shown.words("check.what-if.control.no-idle"))
                + " "
                + shown.words(
                        "check.what-if.control.amps",
                        shown.current(relay.current().peakFanA()),
                        shown.current(ramp.current().peakFanA()),
                        shown.temperature(relay.run().peakCoolantK()),
                        shown.temperature(ramp.run().peakCoolantK()),
                        shown.figure(relay.fanAmpereHours(), "Ah"),
                        shown.figure(ramp.fanAmpereHours(), "Ah"));
    }

    private static String sensor(WhatIf inBlock, WhatIf inHose, FigureText shown) {
        double hotter = inHose.run().peakCoolantK() - inBlock.run().peakCoolantK();
        return shown.words(
                Math.abs(hotter) < WORTH_NAMING_K ? "check.what-if.sensor.same" : "check.what-if.sensor.moves",
                shown.difference(hotter),
                shown.temperature(inHose.run().peakCoolantK()),
                inHose.stay().map(Course::swingK).map(shown::span).orElse(shown.words("check.none")));
    }

    private static String dead(WhatIf own, WhatIf dead, FigureText shown) {
        double inRun = dead.run().peakCoolantK() - own.run().peakCoolantK();
        String peak = shown.temperature(dead.run().peakCoolantK());
        if (dead.stay().isEmpty() || own.stay().isEmpty()) {
            return shown.words("check.what-if.dead.short", shown.difference(inRun), peak);
        }
        double atIdle = dead.stay().get().endCoolantK() - own.stay().get().endCoolantK();
        return shown.words("check.what-if.dead.computed", shown.difference(inRun), peak, shown.difference(atIdle))
                + " "
                + shown.words(inRun > atIdle ? "check.what-if.dead.differs" : "check.what-if.dead.agrees");
    }

    private static String lower(WhatIf own, List<WhatIf> lower, FigureText shown) {
        StringBuilder text = new StringBuilder();
        double most = 0;
        for (WhatIf w : lower) {
            double buys = own.run().peakCoolantK() - w.run().peakCoolantK();
            most = Math.max(most, buys);
            text.append(shown.words(
                            "check.what-if.set.line",
                            name(w, shown),
                            shown.difference(-buys),
                            shown.figure(w.fanAmpereHours() - own.fanAmpereHours(), "Ah"),
                            shown.duration(Math.max(
                                    0, w.window().secondsBelow() - own.window().secondsBelow()))))
                    .append(' ');
        }
        if (most < WORTH_NAMING_K) {
            text.append(shown.words("check.what-if.set.nothing"));
        }
        return text.toString().strip();
    }
}
