package headertank.calc.risk;

import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.duty.Duty;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.judged.DutyRater;
import headertank.calc.rating.Plant;
import headertank.calc.rating.PointRater;
import headertank.calc.result.PointRating;
import headertank.calc.verdict.DutyVerdict;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** The car that the risk rules look at; remembers the margins of its present state. */
public final class CarUnderReview implements RiskContext {

    private static final List<BuildField> OF_CORE = List.of(
            BuildField.CORE_MATERIAL,
            BuildField.FIN_KIND,
            BuildField.FIN_PITCH,
            BuildField.FIN_HEIGHT,
            BuildField.TUBE_HEIGHT,
            BuildField.TUBE_ROWS);

    private final Resolved resolved;
    private final List<DutyVerdict> duties;
    private final Function<Build, Resolved> resolve;
    private final Map<String, Double> marginsNow = new HashMap<>();

    /**
     * @param resolved every value that the car was rated with
     * @param duties what was found
     * @param resolve fills the gaps of an altered car as those of this one were, with the shop's own figures first
     */
    public CarUnderReview(Resolved resolved, List<DutyVerdict> duties, Function<Build, Resolved> resolve) {
        this.resolved = resolved;
        this.duties = duties;
        this.resolve = resolve;
    }

    @Override
    public Build build() {
        return resolved.build();
    }

    @Override
    public Resolved resolved() {
        return resolved;
    }

    @Override
    public List<DutyVerdict> duties() {
        return duties;
    }

    @Override
    public double marginK(Resolved other, Duty duty) {
        if (other == resolved) {
            return marginsNow.computeIfAbsent(duty.id(), id -> DutyRater.finiteMarginK(Plant.of(resolved), duty));
        }
        return DutyRater.finiteMarginK(Plant.of(other), duty);
    }

    @Override
    public PointRating at(Resolved other, OperatingPoint point) {
        return PointRater.rate(Plant.of(other), point);
    }

    @Override
    public Resolved withCoreClass(String coreClassId) {
        Build.Builder changed = resolved.build().change().seen(BuildField.CORE_CLASS, coreClassId);
        OF_CORE.forEach(changed::unknown);
        return resolve.apply(changed.build());
    }
}
