package headertank.app.drawing;

import headertank.app.check.Checks;
import headertank.app.check.stored.CheckInput;
import headertank.app.check.stored.CheckResult;
import headertank.app.check.stored.DutyResult;
import headertank.app.check.stored.PointResult;
import headertank.app.check.stored.StoredCheck;
import headertank.app.evidence.Lessons;
import headertank.app.problem.NotFoundException;
import headertank.app.shop.Shops;
import headertank.calc.Rater;
import headertank.calc.Version;
import headertank.calc.result.CoolingCurves;
import java.util.Comparator;
import java.util.Optional;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;

/** Draws stored checks, from what went in and what came out. */
@Component("drawings")
public class Drawings {

    private final Checks checks;
    private final Shops shops;
    private final Rater rater;
    private final Lessons lessons;
    private final MessageSource messages;

    Drawings(Checks checks, Shops shops, Rater rater, Lessons lessons, MessageSource messages) {
        this.checks = checks;
        this.shops = shops;
        this.rater = rater;
        this.lessons = lessons;
        this.messages = messages;
    }

    /** At the point that decides the duty with the least margin. */
    public CheckDrawing deciding(StoredCheck check) {
        DutyResult duty = worst(check.result());
        return draw(check, duty, duty.deciding());
    }

    /**
     * At a named operating point.
     *
     * @param dutyId empty for the duty with the least margin
     * @param pointId empty for the point that decides
     * @throws NotFoundException when the check has no such duty or point
     */
    public CheckDrawing at(StoredCheck check, String dutyId, String pointId) {
        DutyResult duty = dutyId.isEmpty()
                ? worst(check.result())
                : check.result().duty(dutyId).orElseThrow(() -> new NotFoundException("duty", dutyId));
        PointResult point = pointId.isEmpty()
                ? duty.deciding()
                : duty.points().stream()
                        .filter(p -> p.id().equals(pointId))
                        .findFirst()
                        .orElseThrow(() -> new NotFoundException("point", pointId));
        return draw(check, duty, point);
    }

    private static DutyResult worst(CheckResult result) {
        return result.duties().stream()
                .min(Comparator.comparingDouble(DutyResult::coolantMarginK))
                .orElseThrow();
    }

    private CheckDrawing draw(StoredCheck check, DutyResult duty, PointResult point) {
        Words words = new Words(messages, shops.current().unitSystem(), LocaleContextHolder.getLocale());
        CheckInput input = checks.input(check.line().id());
        Rater known = input.learned()
                .map(l -> rater.knowing(
                        lessons.kept(check.line().carId(), l.lesson()).learned()))
                .orElse(rater);
        return draw(check.line().id(), input, check.result(), duty, point, words, known);
    }

    static CheckDrawing draw(
            long checkId,
            CheckInput input,
            CheckResult result,
            DutyResult duty,
            PointResult point,
            Words words,
            Rater rater) {
        CarParts car = new CarParts(input);
        StateFigures state = new StateFigures(point);
        boolean samePhysics = input.calcCoreVersion().equals(Version.CALC_CORE);
        CurveCharts charts = new CurveCharts(words);
        Optional<CoolingCurves> curves =
                samePhysics ? state.state().map(s -> rater.curves(car.resolved(rater), s)) : Optional.empty();
        return new CheckDrawing(
                checkId,
                duty,
                point,
                AirSideDrawing.of(car, state, words),
                CoolantSideDrawing.of(car, state, words),
                Sentences.of(car, state, words),
                curves.map(charts::air),
                curves.map(c -> charts.heat(c, state.askedW(), state.engineOutK(), result.coolantLimitK())),
                !samePhysics && state.steady());
    }
}
