package headertank.app.check;

import headertank.app.check.figure.FigureText;
import headertank.app.check.stored.CheckResult;
import headertank.app.check.stored.Decision;
import headertank.app.check.stored.DutyResult;
import headertank.app.check.stored.StoredCheck;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a signature may say about a check. Holding a car back is always possible; a signature that replaces another says why. */
final class SignOffRules {

    private SignOffRules() {}

    /**
     * @param shown words and units of whoever signs
     * @return why the signature is refused, empty when it is not
     */
    static List<SignOffFault> faults(StoredCheck check, SignOffForm form, FigureText shown) {
        List<SignOffFault> faults = new ArrayList<>();
        if (form.decision() != null && check.isSigned() && form.remark().isBlank()) {
            faults.add(new SignOffFault("remark", "check.sign.why-again", ""));
        }
        if (form.decision() == null || form.decision() == Decision.HOLD_BACK) {
            return faults;
        }
        if (check.line().outOfDate()) {
            faults.add(new SignOffFault("decision", "check.sign.out-of-date", ""));
        }
        CheckResult result = check.result();
        boolean plain = form.decision() == Decision.DELIVER;
        if (plain && !result.refused().isEmpty()) {
            faults.add(new SignOffFault("decision", "check.sign.refused", labels(result.refused(), shown)));
        } else if (plain && !result.conditions().isEmpty()) {
            faults.add(new SignOffFault("decision", "check.sign.has-conditions", ""));
        }
        if (!plain) {
            withConditions(result, form).ifPresent(faults::add);
            unnamed(result, form.remark(), shown).ifPresent(faults::add);
        }
        return faults;
    }

    private static Optional<SignOffFault> withConditions(CheckResult result, SignOffForm form) {
        boolean all = new HashSet<>(form.accepted())
                .containsAll(result.conditions().stream()
                        .map(CheckResult.Condition::key)
                        .toList());
        return all ? Optional.empty() : Optional.of(new SignOffFault("accepted", "check.sign.not-accepted", ""));
    }

    /** A car that was refused leaves only with a remark that names what it was refused for. */
    private static Optional<SignOffFault> unnamed(CheckResult result, String remark, FigureText shown) {
        String said = remark.toLowerCase(Locale.ROOT);
        List<DutyResult> missing =
                result.refused().stream().filter(d -> !isNamed(d, said, shown)).toList();
        if (!missing.isEmpty()) {
            return Optional.of(new SignOffFault("remark", "check.sign.name-refused", labels(missing, shown)));
        }
        return !result.stops().isEmpty() && remark.isBlank()
                ? Optional.of(new SignOffFault(
                        "remark",
                        "check.sign.name-stop",
                        result.stops().stream()
                                .map(CheckResult.FlagLine::title)
                                .map(shown::said)
                                .collect(Collectors.joining(", "))))
                : Optional.empty();
    }

    private static boolean isNamed(DutyResult duty, String remark, FigureText shown) {
        return Stream.of(FigureText.inShort(duty.label()), shown.shortDuty(duty))
                .map(name -> name.toLowerCase(Locale.ROOT))
                .anyMatch(remark::contains);
    }

    private static String labels(List<DutyResult> duties, FigureText shown) {
        return duties.stream().map(shown::shortDuty).collect(Collectors.joining(", "));
    }
}
