package headertank.app.check.snapshot;

import static headertank.app.check.snapshot.RunSnapshot.column;

import headertank.app.check.stored.StoredVerdict;
import headertank.app.check.stored.WhatIf;
import headertank.app.check.stored.WhatIf.Course;
import headertank.app.check.stored.WhatIf.Kind;
import headertank.calc.result.RunResult;
import headertank.calc.result.RunResult.Sample;
import headertank.calc.verdict.DrivenAgain;
import java.util.List;

/** Turns a schedule driven again into what is stored of it. */
final class WhatIfSnapshot {

    private WhatIfSnapshot() {}

    static WhatIf of(DrivenAgain again) {
        RunResult run = again.run();
        return new WhatIf(
                Kind.valueOf(again.kind().name()),
                again.asIs(),
                again.setK(),
                StoredVerdict.valueOf(again.verdict().name()),
                again.marginK(),
                course(run),
                again.stay().map(WhatIfSnapshot::course),
                RunSnapshot.current(run.current()),
                RunSnapshot.window(run.window()),
                run.charge().fanAmpereHours(),
                run.fanStarts());
    }

    private static Course course(RunResult run) {
        List<Sample> kept = Thinning.forTemperatures(run.trace());
        return new Course(
                run.peaks().coolantK(),
                run.peaks().coolantAtS(),
                RunSnapshot.moment(run.aboveLimit().firstS()),
                run.aboveLimit().seconds(),
                run.peaks().lowestBoilingMarginK(),
                run.settled().swingK(),
                run.settled().gaugeSwingK(),
                column(kept, Sample::timeS, 10),
                column(kept, Sample::coolantK, 100),
                column(kept, Sample::gaugeK, 100));
    }
}
