package headertank.app.gate;

import headertank.app.gate.Standing.Check;
import headertank.app.gate.Standing.Job;
import headertank.app.shop.Role;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

/** Somebody takes a step. */
record Deed(Role who, Step step) {

    /** Everybody may try everything. */
    static final List<Deed> ALL = Stream.of(Role.values())
            .flatMap(who -> Stream.of(Step.values()).map(step -> new Deed(who, step)))
            .toList();

    /** Whether the machine lets it through. */
    boolean isPossible(Standing at) {
        return step.roles().contains(who) && step.refusal(at).isEmpty();
    }

    /** Where it leads; a deed that is not let through leads nowhere. */
    Standing from(Standing at) {
        return isPossible(at) ? step.from(at) : at;
    }

    /**
     * One to three deeds at the same time; most of them such as bring the car nearer to its customer, or as can be done at all.
     */
    static List<Deed> together(Random random, Standing at) {
        List<Deed> possible = ALL.stream().filter(d -> d.isPossible(at)).toList();
        List<Deed> nearer = possible.stream()
                .filter(d -> d.step() == Step.HAND_OVER || far(d.from(at)) < far(at))
                .toList();
        List<Deed> likely = nearer.isEmpty() || random.nextInt(6) == 0 ? possible : nearer;
        List<Deed> deeds = new ArrayList<>();
        int many = random.nextInt(4) == 0 ? 2 + random.nextInt(2) : 1;
        while (deeds.size() < many) {
            List<Deed> from = random.nextInt(8) == 0 ? ALL : likely;
            deeds.add(from.get(random.nextInt(from.size())));
        }
        return deeds;
    }

    /** How far it still is to the customer. */
    private static int far(Standing at) {
        int toDo = at.obstacles().size() + at.faults().size() + (at.listComplete() ? 0 : 1) + (at.described() ? 0 : 2);
        return 2 * toDo + (at.check() == Check.LEAVES ? 0 : at.isRated() ? 1 : 3) + (at.job() == Job.OPEN ? 0 : 20);
    }
}
