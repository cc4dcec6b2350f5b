package headertank.calc.result;

import headertank.calc.quantity.Message;
import java.util.List;

/**
 * A change that would buy margin, re-rated for this car by itself.
 *
 * @param id stable name of the candidate
 * @param label what to change
 * @param gains margin gained in each duty, in the order of the rating [K]
 */
public record Improvement(String id, Message label, List<Gain> gains) {

    public Improvement {
        gains = List.copyOf(gains);
    }

    /**
     * @param dutyId the duty
     * @param gainK margin with the change minus margin now, without uncertainty [K]
     */
    public record Gain(String dutyId, double gainK) {}

    /** @return margin gained in the duty [K], 0 when it was not rated */
    public double gainK(String dutyId) {
        return gains.stream()
                .filter(g -> g.dutyId().equals(dutyId))
                .mapToDouble(Gain::gainK)
                .findFirst()
                .orElse(0);
    }
}
