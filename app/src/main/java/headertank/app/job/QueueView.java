package headertank.app.job;

import headertank.app.gate.Stage;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;

/** The choices of open jobs that pages offer. */
enum QueueView {
    ALL,
    /** Promised for today or before. */
    DUE,
    /** What the workshop has to do: rate, sign, go through the list, or see to a car that stays. */
    WORKSHOP;

    Queue.Choice choice(LocalDate today) {
        return switch (this) {
            case ALL -> Queue.Choice.ALL;
            case DUE -> new Queue.Choice(List.of(), today);
            case WORKSHOP ->
                new Queue.Choice(
                        List.of(
                                Stage.TO_RATE,
                                Stage.TO_SIGN,
                                Stage.STAYS,
                                Stage.SENT_BACK,
                                Stage.FAULT_OPEN,
                                Stage.TO_GO_THROUGH),
                        null);
        };
    }

    /** As it stands in an address. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** What an address asks for; everything when the word is unknown. */
    static QueueView of(String word) {
        for (QueueView show : values()) {
            if (show.word().equals(word)) {
                return show;
            }
        }
        return ALL;
    }
}
