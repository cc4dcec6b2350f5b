package headertank.calc.cause;

import headertank.calc.quantity.Message;
import java.util.List;
import java.util.Optional;

/**
 * Which cause most likely made a car run hot, and what to test next.
 *
 * @param causes all that the car can have, the likeliest first; their posteriors sum to one
 * @param answers the same causes as answers, the likeliest first: a cause, or up to three that what is known cannot tell apart
 * @param settled whether the first answer needs no further test: it is one cause that is likely enough, or several and no test is left
 *     that tells them apart
 * @param next tests that tell causes apart, the one that tells most per minute first
 */
public record Ranking(List<Ranked> causes, List<Answer> answers, boolean settled, List<NextTest> next) {

    public Ranking {
        causes = List.copyOf(causes);
        answers = List.copyOf(answers);
        next = List.copyOf(next);
    }

    /**
     * One cause, or several that what is known cannot tell apart.
     *
     * @param ids of the causes, the likeliest first
     * @param posterior how likely it is that one of them is it [-]
     */
    public record Answer(List<String> ids, double posterior) {
        public Answer {
            ids = List.copyOf(ids);
        }
    }

    /**
     * One cause.
     *
     * @param id of the {@link Cause}
     * @param name what it is called
     * @param source what prior, severities and chances rest on
     * @param prior how likely it was before anything was seen [-]
     * @param posterior how likely it is now [-]
     * @param amount how bad it would have to be, when its severity has a figure
     * @param clues what speaks for and against it, the strongest first
     */
    public record Ranked(
            String id,
            Message name,
            String source,
            double prior,
            double posterior,
            Optional<Message> amount,
            List<Clue> clues) {
        public Ranked {
            clues = List.copyOf(clues);
        }
    }

    /**
     * Something that was seen, and what it says of a cause.
     *
     * @param what what was seen
     * @param timesLikelier how often it is seen with the cause over how often without; above 1 it speaks for it [-]
     */
    public record Clue(Message what, double timesLikelier) {}

    /**
     * A test.
     *
     * @param test what is tested
     * @param bits by how much the entropy of the ranking is expected to drop [bit]
     * @param outcomes what it may show and what each would mean, the likeliest first
     */
    public record NextTest(Inquiry test, double bits, List<Meaning> outcomes) {
        private static final double READY_MIN = 10;

        public NextTest {
            outcomes = List.copyOf(outcomes);
        }

        /**
         * @return expected drop for each minute [bit/min]; ten minutes more than the test takes go into getting the car and the tools
         *     ready, common practice, no source
         */
        public double bitsPerMinute() {
            return bits / (READY_MIN + test.minutes());
        }
    }

    /**
     * What an outcome would mean.
     *
     * @param outcome what the test would show
     * @param chance how likely it is to show it [-]
     * @param first name of the cause that would then be the likeliest
     * @param posterior how likely that would be [-]
     */
    public record Meaning(Observation outcome, double chance, Message first, double posterior) {}
}
