package headertank.calc.risk;

import headertank.calc.quantity.Message;
import headertank.calc.quantity.SiFigure;
import java.util.List;

/**
 * A risky choice found on a car.
 *
 * @param ruleId stable name of the rule
 * @param ruleVersion version of the rule
 * @param title what it is, a few words
 * @param weight how much it matters for this car, from its computed consequences
 * @param scope whether it caps every verdict by its weight or already is in the margins
 * @param reason why it matters, with the physics
 * @param consequences what it means for this car, computed
 * @param advice what to do about it
 * @param tradeSays what many in the trade say about it, where that and the physics differ; empty otherwise
 * @param caution the usual caution for doing the work, empty when none
 * @param source what the rule rests on
 */
public record Flag(
        String ruleId,
        String ruleVersion,
        Message title,
        Weight weight,
        Scope scope,
        Message reason,
        List<Consequence> consequences,
        Message advice,
        Message tradeSays,
        Message caution,
        String source) {

    public Flag {
        consequences = List.copyOf(consequences);
    }

    /** Where a flag counts. */
    public enum Scope {
        /** Whatever the duty: no verdict can be better than its weight allows. */
        EVERY_DUTY,
        /** What it costs already is in the margins and findings of each duty. */
        IN_THE_MARGINS
    }

    /** How much a flag matters. */
    public enum Weight {
        /** Good to know; costs this car little. */
        REMARK,
        /** To be cleared up or accepted by whoever signs. */
        CONDITION,
        /** Not to leave the shop like this. */
        STOP;

        /**
         * @param gains gains of margin that undoing the choice would bring [K]
         * @return {@link #CONDITION} when any of them is 2 K or more, else {@link #REMARK}
         */
        static Weight ofGains(List<Consequence> gains) {
            return gains.stream().anyMatch(g -> g.value() >= 2.0) ? CONDITION : REMARK;
        }
    }

    /**
     * A computed consequence.
     *
     * @param what what the figure is
     * @param dutyId the duty it was computed for, empty when for none in particular
     * @param figure the figure
     */
    public record Consequence(Message what, String dutyId, SiFigure figure) {

        /** @return the figure in the SI unit of its kind */
        public double value() {
            return figure.si();
        }
    }
}
