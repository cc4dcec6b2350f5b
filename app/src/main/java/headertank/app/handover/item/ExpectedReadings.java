package headertank.app.handover.item;

import headertank.app.carspec.Revisions;
import headertank.app.check.Checks;
import headertank.app.check.RatingBench;
import headertank.app.evidence.Lessons;
import headertank.calc.Rater;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.Resolved;
import headertank.calc.result.IdleExpectation;
import java.util.function.Supplier;
import org.springframework.stereotype.Component;
import org.springframework.util.ConcurrentLruCache;

/**
 * What is expected to be read off a car that idles in the workshop. It takes many cold starts to work out, and follows from the car as
 * it is known and the air alone: the last answers are kept, for a car that is rated again, or comes back, is asked about again.
 */
@Component
public class ExpectedReadings {

    /** Cars in their air; modelling choice. */
    private static final int MOST_KEPT = 200;

    private final Checks checks;
    private final Revisions revisions;
    private final Lessons lessons;
    private final RatingBench bench;
    private final ConcurrentLruCache<Asked, IdleExpectation> kept =
            new ConcurrentLruCache<>(MOST_KEPT, a -> a.answer().get());

    /**
     * A car in its air, which alone tells questions apart.
     *
     * @param answer works it out
     */
    private record Asked(Resolved car, Supplier<IdleExpectation> answer) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Asked a && car.equals(a.car);
        }

        @Override
        public int hashCode() {
            return car.hashCode();
        }
    }

    ExpectedReadings(Checks checks, Revisions revisions, Lessons lessons, RatingBench bench) {
        this.checks = checks;
        this.revisions = revisions;
        this.lessons = lessons;
        this.bench = bench;
    }

    /**
     * @param checkId a check of this shop
     * @param ambientK air in the workshop [K]
     * @throws headertank.app.problem.ConflictException when it takes too long
     */
    public IdleExpectation of(long checkId, double ambientK) {
        Build build = revisions.byId(checks.input(checkId).revisionId()).spec().build();
        Rater rater = lessons.rater(checks.byId(checkId).line().carId());
        return kept.get(new Asked(
                rater.resolve(build.inAir(ambientK)),
                () -> bench.compute(() -> rater.idleInWorkshop(build, ambientK))));
    }
}
