package headertank.app.handover.item;

import headertank.app.check.stored.CheckResult.FlagLine;
import java.util.List;
import java.util.Optional;

/**
 * One item of a car's check list.
 *
 * @param key stable name within the list
 * @param textKey start of its sentences in the message files
 * @param field key of the field that its sentences name, empty for none
 * @param token that field's option, empty for a number
 * @param value that field's number [SI], NaN for an option
 * @param assumed whether nobody has stated that field
 * @param flag the risky choice that it is about, for such an item
 */
public record CheckItem(
        String key,
        WarmUpStage stage,
        String textKey,
        Optional<MeasuredQuantity> quantity,
        String field,
        String token,
        double value,
        boolean assumed,
        List<Caution> cautions,
        Optional<FlagLine> flag) {

    public CheckItem {
        cautions = List.copyOf(cautions);
    }

    public boolean isMeasured() {
        return quantity.isPresent();
    }
}
