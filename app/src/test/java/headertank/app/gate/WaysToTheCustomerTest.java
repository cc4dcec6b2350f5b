package headertank.app.gate;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.app.account.RouteRights;
import headertank.app.gate.Standing.Check;
import headertank.app.gate.Standing.Job;
import headertank.app.gate.Standing.Open;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.springframework.http.HttpMethod;

/**
 * Every way that people can take a car through the state machine, held against a diary that knows nothing of the machine: it
 * writes down what happened, and asserts that no car was ever handed over past something that is not settled.
 */
class WaysToTheCustomerTest {

    private static final int STEPS = 5;
    private static final int WALKS = 2000;
    private static final int LONGEST = 30;

    /**
     * What has happened to a car, in plain words, kept beside the machine.
     *
     * @param open what was found and not settled
     * @param signed the last signature on the newest check, since anything else was rated
     * @param gone through whether somebody went through its list, and decided it since the last signature and the last fault
     */
    private record Diary(
            Standing at,
            Set<FaultKind> open,
            Check signed,
            boolean goneThrough,
            boolean decided,
            boolean away,
            int handedOver) {

        static final Diary BLANK = new Diary(Standing.NEW, Set.of(), Check.NONE, false, false, false, 0);

        static Diary at(Standing standing) {
            return new Diary(
                    standing,
                    standing.faults().keySet(),
                    standing.check(),
                    standing.listComplete(),
                    standing.decided(),
                    standing.away(),
                    0);
        }

        /** The same diary when the deed is refused. */
        Diary after(Deed deed) {
            if (!deed.isPossible(at)) {
                return this;
            }
            Standing now = deed.step().from(at);
            Diary next =
                    switch (deed.step()) {
                        case FIND_FAULT -> with(now, plus(FaultKind.FOUND), signed, goneThrough, false);
                        case READ_OUTSIDE -> with(now, plus(FaultKind.READING), signed, goneThrough, false);
                        case SEND_BACK -> with(now, plus(FaultKind.SENT_BACK), signed, goneThrough, false);
                        case READ_WITHIN -> with(now, minus(FaultKind.READING), signed, goneThrough, decided);
                        case CLEAR_BY_REASON -> with(now, Set.of(), signed, goneThrough, decided);
                        case CLEAR_BY_REVISION -> with(now, now.faults().keySet(), signed, goneThrough, decided);
                        case SAVE_REVISION -> with(now, open, Check.NONE, false, false);
                        case RATE ->
                            signed == Check.NONE || away
                                    ? with(now, open, Check.UNSIGNED, false, false)
                                            .here()
                                    : with(now, open, signed, goneThrough, decided);
                        case SIGN_LEAVES -> with(now, open, Check.LEAVES, goneThrough, false);
                        case SIGN_STAYS -> with(now, open, Check.STAYS, goneThrough, false);
                        case ANSWER_ALL, LEAVE_OUT -> with(now, open, signed, true, decided);
                        case CHANGE_LIST -> with(now, open, signed, goneThrough, decided);
                        case DECIDE_LEAVES -> with(now, open, signed, goneThrough, true);
                        case OPEN_JOB ->
                            signed == Check.UNSIGNED && !away
                                    ? with(now, open, signed, goneThrough, decided)
                                    : with(now, open, Check.NONE, false, false).here();
                        case HAND_OVER -> handOver(now);
                        case CALL_OFF -> new Diary(now, open, signed, goneThrough, decided, true, handedOver);
                        case TAKE_BACK ->
                            with(now, open, signed, goneThrough, decided).here();
                        case PAUSE, RESUME -> with(now, open, signed, goneThrough, decided);
                    };
            return next;
        }

        private Diary handOver(Standing now) {
            assertThat(open).as("open when handed over").isEmpty();
            assertThat(signed).as("signature when handed over").isEqualTo(Check.LEAVES);
            assertThat(goneThrough).as("list gone through when handed over").isTrue();
            assertThat(decided).as("list decided when handed over").isTrue();
            assertThat(away).as("there when handed over").isFalse();
            return new Diary(now, open, signed, goneThrough, decided, true, handedOver + 1);
        }

        private Diary with(Standing now, Set<FaultKind> open, Check signed, boolean goneThrough, boolean decided) {
            return new Diary(now, open, signed, goneThrough, decided, away, handedOver);
        }

        private Diary here() {
            return new Diary(at, open, signed, goneThrough, decided, false, handedOver);
        }

        private Set<FaultKind> plus(FaultKind kind) {
            Set<FaultKind> all = EnumSet.of(kind);
            all.addAll(open);
            return all;
        }

        private Set<FaultKind> minus(FaultKind kind) {
            Set<FaultKind> all = EnumSet.noneOf(FaultKind.class);
            all.addAll(open);
            all.remove(kind);
            return all;
        }

        /** The machine says of the car what the diary says. */
        void isTrueToTheMachine() {
            assertThat(at.faults().keySet()).isEqualTo(open);
            boolean may = open.isEmpty() && signed == Check.LEAVES && goneThrough && decided && !away;
            assertThat(at.mayLeave()).as("%s", this).isEqualTo(may);
            assertThat(at.stage() == Stage.READY).isEqualTo(may && (at.job() == Job.OPEN || at.job() == Job.NONE));
            if (at.job() == Job.HANDED_OVER && away) {
                assertThat(open).as("open while the customer has the car").isEmpty();
            }
        }
    }

    private int ways;
    private int handedOver;

    @Test
    void noFiveStepsOfAnybodyLeadACarPastAnOpenFault() {
        for (Diary start : starts()) {
            walk(start, STEPS);
        }
        System.out.printf(
                "%d ways of up to %d accepted steps from %d places, %d of them through a hand-over%n",
                ways, STEPS, starts().size(), handedOver);
        assertThat(handedOver).as("ways on which a car is handed over").isGreaterThan(1000);
    }

    /** A refused step changes nothing, so the ways through it are those without it. */
    private void walk(Diary from, int steps) {
        from.isTrueToTheMachine();
        ways++;
        handedOver += from.handedOver() > 0 ? 1 : 0;
        if (steps == 0) {
            return;
        }
        for (Deed deed : Deed.ALL) {
            Diary next = from.after(deed);
            if (next != from) {
                walk(next, steps - 1);
            }
        }
    }

    /** Places that a car needs more than five steps to reach are starts of their own. */
    private static List<Diary> starts() {
        Standing rated = Standing.NEW.withJob(Job.OPEN).revised().rated(Check.UNSIGNED);
        Standing signed = rated.withList(true).signed(Check.LEAVES);
        Standing ready = signed.withDecision(true);
        return List.of(
                Diary.BLANK,
                Diary.at(rated),
                Diary.at(signed),
                Diary.at(ready),
                Diary.at(ready.withJob(Job.HANDED_OVER).withAway(true)),
                Diary.at(signed.withFault(FaultKind.SENT_BACK, Open.BOTH).withFault(FaultKind.READING, Open.OLD)));
    }

    @Test
    void noLongWalkDoesEitherSomeStepsAtTheSameTime() {
        long seed = Long.getLong("headertank.seed", System.nanoTime());
        System.out.println("headertank.seed=" + seed);
        Random random = new Random(seed);
        int through = 0;
        for (int walk = 0; walk < WALKS; walk++) {
            Diary at = Diary.BLANK;
            List<Deed> taken = new ArrayList<>();
            int length = 1 + random.nextInt(LONGEST);
            while (taken.size() < length) {
                // whoever acts at the same time is let through one by one, in any order: what each of them saw may be
                // overtaken
                for (Deed deed : Deed.together(random, at.at())) {
                    taken.add(deed);
                    at = at.after(deed);
                    at.isTrueToTheMachine();
                }
            }
            through += at.handedOver() > 0 ? 1 : 0;
        }
        assertThat(through).as("walks with a hand-over").isGreaterThan(WALKS / 100);
    }

    @Test
    void aStepThatIsRefusedSaysWhyAndCannotBeTaken() {
        Standing faulty = Diary.at(Standing.NEW.withJob(Job.OPEN).revised().rated(Check.LEAVES))
                .at()
                .withFault(FaultKind.FOUND, Open.NEW);
        assertThat(Step.HAND_OVER.refusal(faulty)).contains("gate.may-not-leave");
        assertThat(Step.DECIDE_LEAVES.refusal(faulty)).contains("gate.fault-open");
        assertThat(faulty.obstacles()).containsExactly(Obstacle.FAULT_OPEN, Obstacle.LIST_UNDECIDED);
        assertThat(Step.RATE.from(faulty)).as("rating with nothing changed").isEqualTo(faulty);
    }

    @Test
    void theMachineKnowsTheRolesOfTheRoutes() {
        Map<Step, String> routes = Map.of(
                Step.OPEN_JOB, "/cars/1/jobs",
                Step.PAUSE, "/jobs/1/stop",
                Step.RESUME, "/jobs/1/resume",
                Step.HAND_OVER, "/jobs/1/hand-over",
                Step.TAKE_BACK, "/jobs/1/take-back",
                Step.SAVE_REVISION, "/cars/1/spec",
                Step.RATE, "/cars/1/revisions/1/checks",
                Step.SIGN_LEAVES, "/checks/1/sign-off",
                Step.LEAVE_OUT, "/checks/1/handover/entries",
                Step.DECIDE_LEAVES, "/checks/1/handover/decision");
        routes.forEach((step, path) -> assertThat(RouteRights.deciding(HttpMethod.POST, path)
                        .orElseThrow()
                        .roles())
                .as("%s at %s", step, path)
                .isEqualTo(step.roles()));
        assertThat(RouteRights.deciding(HttpMethod.POST, "/duties/street/list")
                        .orElseThrow()
                        .roles())
                .isEqualTo(Step.CHANGE_LIST.roles());
        assertThat(RouteRights.deciding(HttpMethod.POST, "/checks/1/handover/faults/1")
                        .orElseThrow()
                        .roles())
                .isEqualTo(Step.CLEAR_BY_REASON.roles());
    }
}
