package headertank.calc.risk;

import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.coreclass.CoreClass;
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

/** The car that the risk rules look at; remembers the margins of its present state. */
public final class CarUnderReview implements RiskContext {

    private static final List<BuildField> OF_CORE = List.of(
            BuildField.CORE_MATERIAL,
            BuildField.FIN_KIND,
            BuildField.FIN_PITCH,
            BuildField.FIN_HEIGHT,
            BuildField.TUBE_HEIGHT,
            BuildField.TUBE_ROWS);

    private final Build build;
    private final Resolved resolved;
    private final List<DutyVerdict> duties;
    private final Map<String, CoreClass> coreClasses;
    private final Map<String, Double> marginsNow = new HashMap<>();

    /**
     * @param build what is known of the car
     * @param resolved every value that it was rated with
     * @param duties what was found
     * @param coreClasses classes of core that it may be compared with
     */
    public CarUnderReview(
            Build build, Resolved resolved, List<DutyVerdict> duties, Map<String, CoreClass> coreClasses) {
        this.build = build;
        this.resolved = resolved;
        this.duties = duties;
        this.coreClasses = coreClasses;
    }

    @Override
    public Build build() {
        return build;
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
        Build.Builder changed = build.change().seen(BuildField.CORE_CLASS, coreClassId);
        OF_CORE.forEach(changed::unknown);
        return Resolved.of(changed.build(), coreClasses);
    }
}
