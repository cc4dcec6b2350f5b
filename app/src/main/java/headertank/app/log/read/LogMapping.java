package headertank.app.log.read;

import headertank.app.log.file.TimeColumn;
import headertank.app.unit.Scaling;
import java.util.List;
import java.util.Optional;

/** Which column tells the time and which tell what. */
public record LogMapping(TimeColumn time, List<Chosen> columns) {

    public LogMapping {
        columns = List.copyOf(columns);
    }

    /** @param column index from 0 */
    public record Chosen(LogQuantity quantity, int column, Scaling unit) {}

    public Optional<Chosen> of(LogQuantity quantity) {
        return columns.stream().filter(c -> c.quantity() == quantity).findFirst();
    }
}
