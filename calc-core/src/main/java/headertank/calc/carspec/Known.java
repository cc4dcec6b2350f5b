package headertank.calc.carspec;

import headertank.calc.coreclass.CoreClass;
import headertank.calc.quantity.InputException;
import headertank.calc.quantity.InputProblem;
import headertank.calc.quantity.InputText;
import headertank.calc.quantity.MessageArgument;
import headertank.calc.quantity.Stated;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What is known of a car while its gaps are being filled: what was stated, and what was assumed before. */
final class Known {

    private final Build build;
    private final Map<String, CoreClass> coreClasses;
    private final double[] values;
    private final String[] tokens;

    /**
     * @param values numbers by ordinal, NaN where unknown; filled by the caller as defaults are taken
     * @param tokens options by ordinal, empty where unknown; filled by the caller likewise
     */
    Known(Build build, Map<String, CoreClass> coreClasses, double[] values, String[] tokens) {
        this.build = build;
        this.coreClasses = coreClasses;
        this.values = values;
        this.tokens = tokens;
    }

    CarClass carClass() {
        return build.carClass();
    }

    /** @return the class of core that was stated, or the car class's typical one */
    CoreClass coreClass() {
        String id = tokens[BuildField.CORE_CLASS.ordinal()];
        CoreClass found = coreClasses.get(id);
        if (found == null) {
            String known = coreClasses.keySet().stream().sorted().collect(Collectors.joining(", "));
            throw new InputException(List.of(InputProblem.of(
                    BuildField.CORE_CLASS.key(),
                    new MessageArgument.Text(id),
                    InputText.ONE_OF.with(new MessageArgument.Text(known)),
                    InputProblem.Code.NOT_UNDERSTOOD)));
        }
        return found;
    }

    /** @return the number [SI], stated or assumed; NaN when it is not known yet */
    double value(BuildField f) {
        return values[f.ordinal()];
    }

    boolean has(BuildField f) {
        return !Double.isNaN(value(f));
    }

    boolean is(BuildField f, Enum<?> option) {
        return tokens[f.ordinal()].equals(f.token(option));
    }

    /** @return whether somebody stated the number */
    boolean isStated(BuildField f) {
        return build.entries().get(f) instanceof Stated;
    }
}
