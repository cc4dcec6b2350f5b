package headertank.calc.carspec;

import headertank.calc.coreclass.CoreClass;
import headertank.calc.quantity.Chosen;
import headertank.calc.quantity.Entry;
import headertank.calc.quantity.Provenance;
import headertank.calc.quantity.Spread;
import headertank.calc.quantity.Stated;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A build with every gap filled: the value of each field that a rating uses, its spread, and the list of what was
 * assumed. Immutable.
 */
public final class Resolved {

    private static final BuildField[] FIELDS = BuildField.values();

    private final Build build;
    private final double[] values;
    private final String[] tokens;
    private final Spread[] spreads;
    private final List<Assumption> assumptions;
    private final CoreClass coreClass;
    private final Learned learned;

    private Resolved(
            Build build,
            double[] values,
            String[] tokens,
            Spread[] spreads,
            List<Assumption> assumptions,
            CoreClass coreClass,
            Learned learned) {
        this.build = build;
        this.values = values;
        this.tokens = tokens;
        this.spreads = spreads;
        this.assumptions = assumptions;
        this.coreClass = coreClass;
        this.learned = learned;
    }

    /**
     * Fills the gaps of a build with a shop's own figures, and the rest with the defaults of its class.
     *
     * @param build what is known
     * @param coreClasses the installed core classes by id
     * @param standIns the shop's figures for numbers that a build may leave open [SI]
     * @throws headertank.calc.quantity.InputException when the build names a core class that is not installed
     */
    public static Resolved of(Build build, Map<String, CoreClass> coreClasses, Map<BuildField, Double> standIns) {
        double[] values = new double[FIELDS.length];
        String[] tokens = new String[FIELDS.length];
        Spread[] spreads = new Spread[FIELDS.length];
        Arrays.fill(values, Double.NaN);
        Arrays.fill(tokens, "");
        Arrays.fill(spreads, Spread.relative(0));
        for (BuildField f : FIELDS) {
            Entry entry = build.entries().get(f);
            if (entry instanceof Stated s) {
                Spread spread = s.spread() == null ? f.spread(s.from()) : s.spread();
                values[f.ordinal()] = f.allowed().clamp(s.si() * spread.meanFactor());
                spreads[f.ordinal()] = new Spread(spread.sigma(), spread.relative(), 1.0);
            } else if (entry instanceof Chosen c) {
                tokens[f.ordinal()] = c.token();
            }
        }
        Known known = new Known(build, coreClasses, values, tokens);
        List<Assumption> assumptions = new ArrayList<>();
        for (BuildField f : ClassDefaults.ORDER) {
            int i = f.ordinal();
            if (build.entries().containsKey(f)) {
                continue;
            }
            Optional<Assumption> assumed = standIns.containsKey(f)
                    ? Optional.of(
                            new Assumption(f, standIns.get(f), "", Spread.relative(0), AssumptionText.SHOP_FIGURE))
                    : ClassDefaults.assume(f, known);
            if (assumed.isPresent()) {
                Assumption a = assumed.get();
                values[i] = a.value();
                tokens[i] = a.token();
                spreads[i] = a.spread();
                assumptions.add(a);
            }
        }
        assumptions.sort((a, b) -> a.field().compareTo(b.field()));
        return new Resolved(
                build, values, tokens, spreads, List.copyOf(assumptions), known.coreClass(), Learned.NOTHING);
    }

    /**
     * The car with what was learned of it: each value where the evidence has moved it, its spread what is left of it. Of a part
     * that has changed since, and of a value that is now expected otherwise, nothing is taken.
     *
     * @param evidence what was learned, of this build or one before it
     * @return the car as it is known now; {@code this} had learned nothing
     */
    public Resolved knowing(Learned evidence) {
        Learned still = evidence.after(build).keeping(this::isExpectedStill);
        double[] moved = values.clone();
        Spread[] left = spreads.clone();
        for (Learned.Factor f : still.factors()) {
            BuildField.ofKey(f.key()).ifPresent(field -> {
                int i = field.ordinal();
                moved[i] = field.allowed().clamp(spreads[i].moved(values[i], f.moved()));
                left[i] = spreads[i].widened(f.left());
            });
        }
        return new Resolved(build, moved, tokens, left, assumptions, coreClass, still);
    }

    private boolean isExpectedStill(Learned.Factor f) {
        Optional<BuildField> field = BuildField.ofKey(f.key());
        return field.isEmpty()
                || value(field.get()) == f.prior()
                        && spread(field.get()).sigma() == f.sigma()
                        && spread(field.get()).relative() == f.relative();
    }

    /** Whether the same is known of both, by whatever way. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Resolved r
                && build.equals(r.build)
                && Arrays.equals(values, r.values)
                && Arrays.equals(tokens, r.tokens)
                && Arrays.equals(spreads, r.spreads)
                && coreClass.equals(r.coreClass)
                && learned.equals(r.learned);
    }

    @Override
    public int hashCode() {
        return 31 * build.hashCode() + Arrays.hashCode(values);
    }

    /** @return the build that was resolved */
    public Build build() {
        return build;
    }

    /** @return the class of core that stands in for unknown core geometry */
    public CoreClass coreClass() {
        return coreClass;
    }

    /** @return what evidence has taught of this car */
    public Learned learned() {
        return learned;
    }

    /** @return expected value [SI]; NaN for a choice and for a field that is unknown and has no default */
    public double value(BuildField field) {
        return values[field.ordinal()];
    }

    /** @return whether the field has a number, stated or assumed */
    public boolean has(BuildField field) {
        return !Double.isNaN(values[field.ordinal()]);
    }

    /** @return the option, stated or assumed; empty for a number or an unknown choice without a default */
    public String token(BuildField field) {
        return tokens[field.ordinal()];
    }

    /** @return whether the field's option is the given one */
    public boolean is(BuildField field, Enum<?> option) {
        return tokens[field.ordinal()].equals(field.token(option));
    }

    /** @return the field's option as a constant of {@code type} */
    public <E extends Enum<E>> E option(BuildField field, Class<E> type) {
        return Enum.valueOf(type, tokens[field.ordinal()]);
    }

    /** @return how far the value may be off */
    public Spread spread(BuildField field) {
        return spreads[field.ordinal()];
    }

    /** @return where the value comes from; empty when it was assumed */
    public Optional<Provenance> from(BuildField field) {
        return build.entry(field).map(Entry::from);
    }

    /** @return whether the class of car stands in for the field: nobody stated it and the shop has no figure of its own for it */
    public boolean isOfClass(BuildField field) {
        return assumptions.stream().anyMatch(a -> a.field() == field && a.why() != AssumptionText.SHOP_FIGURE);
    }

    /** @return what nobody had stated, in the order of {@link BuildField} */
    public List<Assumption> assumptions() {
        return assumptions;
    }

    /** @return the same with one number replaced, its spread and everything else as before */
    public Resolved with(BuildField field, double value) {
        double[] copy = values.clone();
        copy[field.ordinal()] = value;
        return new Resolved(build, copy, tokens, spreads, assumptions, coreClass, learned);
    }

    /**
     * @param sampled a number for each field in the order of {@link BuildField}
     * @return the same with all numbers replaced
     */
    public Resolved withValues(double[] sampled) {
        if (sampled.length != values.length) {
            throw new IllegalArgumentException("expected " + values.length + " values, got " + sampled.length);
        }
        return new Resolved(build, sampled.clone(), tokens, spreads, assumptions, coreClass, learned);
    }

    /** @return the expected values in the order of {@link BuildField}; a copy */
    public double[] values() {
        return values.clone();
    }

    /** @return the same with one option replaced */
    public Resolved with(BuildField field, Enum<?> option) {
        return withToken(field, field.token(option));
    }

    /** @return the same with one option replaced, by its token as it was stored */
    public Resolved withToken(BuildField field, String token) {
        String[] copy = tokens.clone();
        copy[field.ordinal()] = token;
        return new Resolved(build, values, copy, spreads, assumptions, coreClass, learned);
    }
}
