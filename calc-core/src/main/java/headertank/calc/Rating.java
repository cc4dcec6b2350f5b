package headertank.calc;

import headertank.calc.carspec.Assumption;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.Resolved;
import headertank.calc.quantity.Note;
import headertank.calc.result.Improvement;
import headertank.calc.risk.Flag;
import headertank.calc.verdict.DutyVerdict;
import java.util.List;

/**
 * The whole rating of a build.
 *
 * @param build what was rated
 * @param resolved every value it was rated with
 * @param duties one verdict per duty, in the order asked for
 * @param flags risky choices, heaviest first
 * @param improvements changes that would buy margin, the best first; empty for a preview
 * @param notes where a model was used beyond its source's range
 * @param plugIns rules, policies and sources that took part
 * @param seed seed of the samples
 * @param samples number of samples, 0 for a rating without uncertainty
 * @param version version of calc-core
 */
public record Rating(
        Build build,
        Resolved resolved,
        List<DutyVerdict> duties,
        List<Flag> flags,
        List<Improvement> improvements,
        List<Note> notes,
        List<PlugIn> plugIns,
        long seed,
        int samples,
        String version) {

    public Rating {
        duties = List.copyOf(duties);
        flags = List.copyOf(flags);
        improvements = List.copyOf(improvements);
        notes = List.copyOf(notes);
        plugIns = List.copyOf(plugIns);
    }

    /** @return what nobody had stated and was assumed */
    public List<Assumption> assumptions() {
        return resolved.assumptions();
    }

    /** @throws IllegalArgumentException when the duty was not rated */
    public DutyVerdict duty(String dutyId) {
        return duties.stream()
                .filter(d -> d.duty().id().equals(dutyId))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("duty " + dutyId + " was not rated"));
    }
}
