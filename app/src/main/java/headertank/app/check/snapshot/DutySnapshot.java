package headertank.app.check.snapshot;

import headertank.app.check.stored.CheckInput.Course;
import headertank.app.check.stored.CheckInput.CoursePhase;
import headertank.app.check.stored.CheckInput.Load;
import headertank.app.check.stored.CheckInput.LoadMode;
import headertank.app.check.stored.CheckInput.RatedDuty;
import headertank.app.check.stored.CheckInput.RatedPoint;
import headertank.calc.duty.Demand;
import headertank.calc.duty.Duty;
import java.util.Optional;

/** Turns a duty into what is stored of it with the inputs of a check. */
final class DutySnapshot {

    private DutySnapshot() {}

    static RatedDuty of(Duty duty) {
        return new RatedDuty(
                duty.id(),
                duty.label(),
                duty.points().stream()
                        .map(p -> new RatedPoint(
                                p.id(),
                                p.label(),
                                p.roadSpeedMPerS(),
                                p.yawRad(),
                                p.ambientOffsetK(),
                                load(p.demand()),
                                p.loadSigma()))
                        .toList(),
                duty.schedule()
                        .map(s -> new Course(
                                s.startCoolantK(),
                                s.phases().stream()
                                        .map(p -> new CoursePhase(p.pointId(), p.seconds()))
                                        .toList())),
                duty.source(),
                duty.judged().name());
    }

    private static Load load(Demand demand) {
        if (demand instanceof Demand.EngineOff off) {
            return new Load(
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.of(off.pumpRunOnShare()),
                    Optional.of(off.fansRunOn()),
                    Optional.empty());
        }
        Optional<Double> speed = Optional.of(demand.engineSpeedShare());
        if (demand instanceof Demand.Idle idle) {
            return running(
                    Optional.of(idle.accessoriesW()), Optional.of(idle.airConditioningW()), Optional.empty(), speed);
        }
        if (demand instanceof Demand.Road road) {
            return running(Optional.of(road.accessoriesW()), Optional.empty(), Optional.of(road.slope()), speed);
        }
        return new Load(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                speed,
                Optional.empty(),
                Optional.empty(),
                Optional.of(((Demand.Mix) demand)
                        .modes().stream()
                                .map(m -> new LoadMode(m.timeShare(), m.powerShare(), m.speedShare()))
                                .toList()));
    }

    private static Load running(
            Optional<Double> accessories,
            Optional<Double> airConditioning,
            Optional<Double> slope,
            Optional<Double> speed) {
        return new Load(
                accessories, airConditioning, slope, speed, Optional.empty(), Optional.empty(), Optional.empty());
    }
}
