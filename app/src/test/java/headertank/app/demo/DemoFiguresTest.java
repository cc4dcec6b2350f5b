package headertank.app.demo;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.app.carspec.Spec;
import headertank.app.check.snapshot.Snapshot;
import headertank.app.check.stored.CheckResult;
import headertank.app.check.stored.DutyResult;
import headertank.app.check.stored.StoredVerdict;
import headertank.app.check.stored.WhatIf;
import headertank.calc.Rater;
import headertank.calc.duty.Duty;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The figures of a stored check agree with each other, on every revision of every car of the invented shop. */
class DemoFiguresTest {

    private static final int SAMPLES = 32;

    private final Rater rater = Rater.standard();

    @Test
    void marginVerdictHottestDayAndWhatIfsAgree() {
        DemoSpecs.ALL.forEach((plate, steps) -> steps.forEach(step -> {
            CheckResult result = rated(step.spec());
            for (DutyResult d : result.duties()) {
                String who = plate + ", " + step.reason() + ", " + d.id();
                double above = d.hottestDay().orElseThrow().ambientK() - result.designAmbientK();
                if (Math.abs(d.coolantMarginK()) > 0.05) {
                    assertThat(Math.signum(above)).as(who).isEqualTo(Math.signum(d.coolantMarginK()));
                }
                assertThat(d.whatIfs()).as(who).filteredOn(WhatIf::asIs).allSatisfy(w -> {
                    assertThat(w.verdict()).isEqualTo(d.verdict());
                    assertThat(w.marginK()).isEqualTo(d.coolantMarginK());
                });
                if (d.verdict() != StoredVerdict.NO_GO) {
                    assertThat(above).as(who).isGreaterThanOrEqualTo(-0.05);
                }
            }
        }));
    }

    private CheckResult rated(Spec spec) {
        List<Duty> duties = spec.dutyIds().stream().map(rater.duties()::get).toList();
        return Snapshot.result(rater.rate(spec.build(), duties, SAMPLES), rater);
    }
}
