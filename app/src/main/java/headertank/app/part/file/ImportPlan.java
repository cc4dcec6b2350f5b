package headertank.app.part.file;

import headertank.app.part.PartContent;
import java.util.List;

/**
 * What a file would do to the catalogue.
 *
 * @param lines one for each line of the file without a fault
 * @param faults all of them; with any, nothing is taken over
 * @param fingerprint of what would be done: another one means that the catalogue has changed since
 */
record ImportPlan(List<Line> lines, List<Fault> faults, String fingerprint) {

    enum Deed {
        ADD,
        CHANGE,
        NOTHING
    }

    /**
     * One part.
     *
     * @param number of the line in the file
     * @param id of the part in the catalogue, null for a new one
     * @param version of that part when the plan was made
     * @param changed columns that differ from the catalogue
     * @param retired whether it is, afterwards
     * @param retiredBefore whether it was
     */
    record Line(
            int number,
            Deed deed,
            Long id,
            Integer version,
            PartContent content,
            List<String> changed,
            boolean retired,
            boolean retiredBefore) {}

    /**
     * @param column of the file, empty when the whole line or file is meant
     * @param value that stands there
     */
    record Fault(int line, String column, String value, String sentence) {}

    ImportPlan {
        lines = List.copyOf(lines);
        faults = List.copyOf(faults);
    }

    public long count(Deed deed) {
        return lines.stream().filter(l -> l.deed() == deed).count();
    }

    public long added() {
        return count(Deed.ADD);
    }

    public long changed() {
        return count(Deed.CHANGE);
    }

    public long untouched() {
        return count(Deed.NOTHING);
    }

    /** Whether there is something to take over, and nothing in the way. */
    public boolean ready() {
        return faults.isEmpty() && added() + changed() > 0;
    }
}
