package headertank.calc;

import headertank.calc.advice.Advice;
import headertank.calc.advice.NextToMeasure;
import headertank.calc.attribution.Shares;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Learned;
import headertank.calc.carspec.Resolved;
import headertank.calc.cause.Cause;
import headertank.calc.cause.Ranking;
import headertank.calc.cause.Sighting;
import headertank.calc.choice.FanControlKind;
import headertank.calc.choice.SensorPlacement;
import headertank.calc.coreclass.CoreClass;
import headertank.calc.coreclass.CoreClassSource;
import headertank.calc.diagnosis.Diagnosis;
import headertank.calc.duty.Duty;
import headertank.calc.duty.DutySource;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.evidence.DriveLog;
import headertank.calc.evidence.Evidence;
import headertank.calc.evidence.Replay;
import headertank.calc.judged.DayThatHolds;
import headertank.calc.judged.DutyRater;
import headertank.calc.judged.Samples;
import headertank.calc.learning.Confirming;
import headertank.calc.learning.Learning;
import headertank.calc.learning.Replaying;
import headertank.calc.learning.WorthSeeing;
import headertank.calc.quantity.Note;
import headertank.calc.quantity.SiFigure;
import headertank.calc.quantity.WorkingSection;
import headertank.calc.rating.CurvesAround;
import headertank.calc.rating.FanControlOf;
import headertank.calc.rating.Plant;
import headertank.calc.rating.PointRater;
import headertank.calc.rating.PointWorking;
import headertank.calc.rating.SlowCoolantTable;
import headertank.calc.result.Attribution;
import headertank.calc.result.Balance;
import headertank.calc.result.CoolingCurves;
import headertank.calc.result.HottestDay;
import headertank.calc.result.IdleExpectation;
import headertank.calc.result.Improvement;
import headertank.calc.result.NextEvidence;
import headertank.calc.result.Plan;
import headertank.calc.result.PointRating;
import headertank.calc.result.RunResult;
import headertank.calc.result.SlowCoolant;
import headertank.calc.result.WorthMeasuring;
import headertank.calc.risk.CarUnderReview;
import headertank.calc.risk.Flag;
import headertank.calc.risk.RiskContext;
import headertank.calc.risk.RiskRule;
import headertank.calc.sensor.SensorReading;
import headertank.calc.transients.RunSettings;
import headertank.calc.transients.RunSolver;
import headertank.calc.verdict.DrivenAgain;
import headertank.calc.verdict.DutyOutcome;
import headertank.calc.verdict.DutyVerdict;
import headertank.calc.verdict.Finding;
import headertank.calc.verdict.Verdict;
import headertank.calc.verdict.VerdictPolicy;
import headertank.calc.verdict.VerdictText;
import headertank.calc.whatif.WhatIfs;
import headertank.calc.workshop.IdleInWorkshop;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.ServiceLoader;
import java.util.Set;
import java.util.StringJoiner;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * The front door: rates a build for its duties. Immutable and thread-safe; make one and keep it.
 *
 * <pre>{@code
 * Build build = Build.forCar(CarClass.DRIFT)
 *     .set(BuildField.CORE_WIDTH, Stated.measured(0.65))
 *     .set(BuildField.FAN_FLOW, Stated.advertised(0.85))
 *     .build();
 * Rating rating = Rater.standard().rate(build, List.of(StandardDuties.TRACK));
 * }</pre>
 */
public final class Rater {

    /** Samples of a full rating of which each duty is sure. */
    public static final int SAMPLES = 256;

    /** Most samples of a duty whose probability lies near one at which its verdict turns. */
    public static final int MOST_SAMPLES = 4096;

    private static final int LEAST_SAMPLES = 16;
    private static final int MOST_TO_FIRST = MOST_SAMPLES / SAMPLES;

    /** Seed of all samples: no change of a car rolls the dice anew. */
    private static final long SEED = 20261127L;

    private static final int MOST_IMPROVEMENTS = 6;
    private static final int IDLE_SAMPLES = 96;
    private static final RunSettings TRACED = RunSettings.STANDARD.at(1);

    private final List<Cause> causes;
    private final List<RiskRule> rules;
    private final List<VerdictPolicy> policies;
    private final Map<String, Duty> duties;
    private final Map<String, CoreClass> coreClasses;
    private final List<DutySource> dutySources;
    private final List<CoreClassSource> coreSources;
    private final Map<BuildField, Double> standIns;
    private final Learned learned;
    private final int samples;

    private Rater(
            List<Cause> causes,
            List<RiskRule> rules,
            List<VerdictPolicy> policies,
            List<DutySource> dutySources,
            List<CoreClassSource> coreSources,
            Map<BuildField, Double> standIns,
            Learned learned,
            int samples) {
        this.learned = learned;
        this.samples = samples;
        this.causes = sorted(causes, Cause::id);
        this.rules = sorted(rules, RiskRule::id);
        this.policies = sorted(policies, VerdictPolicy::id);
        if (policies.isEmpty()) {
            throw new IllegalArgumentException("a rater needs at least one verdict policy");
        }
        Map<String, Duty> known = new LinkedHashMap<>();
        Map<String, CoreClass> cores = new TreeMap<>();
        this.dutySources = sorted(dutySources, DutySource::id);
        this.coreSources = sorted(coreSources, CoreClassSource::id);
        this.dutySources.forEach(s -> s.duties().forEach(d -> unique(known, d.id(), d, "duty")));
        this.coreSources.forEach(s -> s.classes().forEach(c -> unique(cores, c.id(), c, "core class")));
        standIns.forEach((field, value) -> {
            if (!field.allowed().contains(value)) {
                throw new IllegalArgumentException(field.key() + " = " + value + ": allowed is " + field.allowed());
            }
        });
        this.standIns = Collections.unmodifiableMap(new TreeMap<>(standIns));
        this.duties = Collections.unmodifiableMap(known);
        this.coreClasses = Collections.unmodifiableMap(cores);
    }

    /** @return a rater with every rule, policy and source that the class path offers, in the order of their ids */
    public static Rater standard() {
        ClassLoader loader = Rater.class.getClassLoader();
        return with(
                        load(RiskRule.class, loader),
                        load(VerdictPolicy.class, loader),
                        load(DutySource.class, loader),
                        load(CoreClassSource.class, loader))
                .suspecting(load(Cause.class, loader));
    }

    /**
     * @return a rater with exactly these rules, policies and sources, which suspects nothing yet
     * @throws IllegalArgumentException when two of a kind share an id
     */
    public static Rater with(
            List<RiskRule> rules,
            List<VerdictPolicy> policies,
            List<DutySource> dutySources,
            List<CoreClassSource> coreSources) {
        return new Rater(List.of(), rules, policies, dutySources, coreSources, Map.of(), Learned.NOTHING, SAMPLES);
    }

    /**
     * @param instead what may be behind a car that comes back hot
     * @return this rater with exactly these causes
     * @throws IllegalArgumentException when two share an id
     */
    public Rater suspecting(List<Cause> instead) {
        return new Rater(instead, rules, policies, dutySources, coreSources, standIns, learned, samples);
    }

    /** @return this rater with the duties of one more source, its id and theirs new here */
    public Rater with(DutySource more) {
        List<DutySource> all = new ArrayList<>(dutySources);
        all.add(more);
        return new Rater(causes, rules, policies, all, coreSources, standIns, learned, samples);
    }

    /** @return this rater with the policy in place of the one of the same id, or beside the others when there is none */
    public Rater with(VerdictPolicy instead) {
        List<VerdictPolicy> all = new ArrayList<>(policies);
        all.removeIf(p -> p.id().equals(instead.id()));
        all.add(instead);
        return new Rater(causes, rules, all, dutySources, coreSources, standIns, learned, samples);
    }

    /**
     * @param figures a shop's own figures for numbers that a build may leave open, within {@link BuildField#allowed} [SI]
     * @return this rater, filling gaps with these before it takes the defaults of the class
     */
    public Rater with(Map<BuildField, Double> figures) {
        return new Rater(causes, rules, policies, dutySources, coreSources, figures, learned, samples);
    }

    /**
     * @param evidence what {@link #learn} made of evidence about a car
     * @return this rater with it: whatever it is asked of that car, and of the same car changed, it answers from what is known of the
     *     parts that are still the same; {@link Learned#NOTHING} forgets it
     */
    public Rater knowing(Learned evidence) {
        return new Rater(causes, rules, policies, dutySources, coreSources, standIns, evidence, samples);
    }

    /**
     * @param count samples of each duty in a full rating, at least 16; near a probability at which a verdict turns up to 16 times as
     *     many are drawn; {@link #SAMPLES} when nobody says
     * @return this rater, faster with fewer samples and surer with more
     * @throws IllegalArgumentException when there are too few to tell 5 % from nothing
     */
    public Rater sampling(int count) {
        if (count < LEAST_SAMPLES) {
            throw new IllegalArgumentException("samples = " + count + ": at least " + LEAST_SAMPLES);
        }
        return new Rater(causes, rules, policies, dutySources, coreSources, standIns, learned, count);
    }

    private static <T> List<T> load(Class<T> type, ClassLoader loader) {
        return ServiceLoader.load(type, loader).stream()
                .map(ServiceLoader.Provider::get)
                .toList();
    }

    private static <T> List<T> sorted(List<T> items, Function<T, String> id) {
        Set<String> ids = new LinkedHashSet<>();
        for (T item : items) {
            if (!ids.add(id.apply(item))) {
                throw new IllegalArgumentException("two plug-ins share the id " + id.apply(item));
            }
        }
        return items.stream().sorted(Comparator.comparing(id)).toList();
    }

    private static <T> void unique(Map<String, T> known, String id, T item, String kind) {
        if (known.putIfAbsent(id, item) != null) {
            throw new IllegalArgumentException("two of kind " + kind + " share the id " + id);
        }
    }

    /** @return every installed duty by id */
    public Map<String, Duty> duties() {
        return duties;
    }

    /** @return every installed class of core by id */
    public Map<String, CoreClass> coreClasses() {
        return coreClasses;
    }

    /** @return the plain English name of every installed class of core, by id in the order of the ids */
    public Map<String, String> coreClassLabels() {
        Map<String, String> labels = new TreeMap<>();
        coreClasses.forEach((id, core) -> labels.put(id, core.label()));
        return Collections.unmodifiableMap(labels);
    }

    /** @return the build with every gap filled, and what was learned of the car */
    public Resolved resolve(Build build) {
        return Resolved.of(build, coreClasses, standIns).knowing(learned);
    }

    /**
     * What evidence says of a car: how far each value and each model factor moves and what is left of its spread. What this rater had
     * learned before is no part of it: name all evidence again.
     *
     * @param build what is known of the car without it
     * @param evidence what was seen, at least one
     * @return what is known now, for {@link #knowing}; the same for the same evidence
     * @throws IllegalArgumentException when there is none, or the car as it is expected has no answer to it
     */
    public Learned learn(Build build, Evidence... evidence) {
        if (evidence.length == 0) {
            throw new IllegalArgumentException("name at least one piece of evidence to learn from");
        }
        return Learning.of(Resolved.of(build, coreClasses, standIns), List.of(evidence));
    }

    /**
     * A log driven again by the car as it is known: its own engine speed, manifold pressure and road speed, the car's thermostat and
     * fans.
     *
     * @param build the car
     * @param log the log
     * @return what its gauge showed beside what it would have shown
     */
    public Replay replay(Build build, DriveLog log) {
        return Replaying.of(resolve(build), log);
    }

    /**
     * Whether a run that was not learned from came out as the car is known. When it did, {@link Learned#confirmed} says so from then on.
     *
     * @param build the car
     * @param log a log that is no part of what this rater knows
     * @return whether enough of its moments lie within the band of what is known
     */
    public boolean confirms(Build build, DriveLog log) {
        return Confirming.of(resolve(build), log);
    }

    /**
     * What a shop should find out next of a car as it is known.
     *
     * @param build the car
     * @param asked duties whose margins are to become narrower, at least one
     * @return what can be done, what narrows most first
     */
    public List<NextEvidence> nextEvidence(Build build, List<Duty> asked) {
        if (asked.isEmpty()) {
            throw new IllegalArgumentException("name at least one duty to find something out for");
        }
        return WorthSeeing.of(resolve(build), asked, DutyRater::finiteMarginK);
    }

    /** @return a full rating: verdicts with uncertainty, and flags; more samples where a verdict hangs on them */
    public Rating rate(Build build, List<Duty> asked) {
        return rate(build, asked, samples, samples * MOST_TO_FIRST);
    }

    /** @return a rating without uncertainty, for a preview while somebody types */
    public Rating preview(Build build, List<Duty> asked) {
        return rate(build, asked, 0);
    }

    /**
     * @param build what is known of the car
     * @param asked duties to rate, at least one
     * @param samples number of samples of each duty, 0 for none
     */
    public Rating rate(Build build, List<Duty> asked, int samples) {
        return rate(build, asked, samples, samples);
    }

    private Rating rate(Build build, List<Duty> asked, int samples, int most) {
        if (asked.isEmpty()) {
            throw new IllegalArgumentException("name at least one duty to rate");
        }
        Resolved resolved = resolve(build);
        Plant plant = Plant.of(resolved);
        List<PlugIn> plugIns = sources(asked);
        List<Note> notes = new ArrayList<>();
        List<DutyOutcome> outcomes = new ArrayList<>();
        for (Duty duty : asked) {
            DutyOutcome outcome = DutyRater.outcome(plant, duty);
            outcome.points().forEach(p -> p.notes().forEach(n -> keepWidest(notes, n)));
            outcomes.add(outcome);
        }
        if (samples > 0) {
            Samples sampling = new Samples(samples, most, turns(), SEED);
            outcomes.replaceAll(o -> DutyRater.sampled(resolved, o, sampling));
        }
        List<DutyVerdict> verdicts =
                outcomes.stream().map(o -> judge(o, plugIns)).toList();
        List<Flag> flags = flags(build, resolved, verdicts, plugIns);
        List<DutyVerdict> capped =
                verdicts.stream().map(v -> cappedBy(flags, v)).toList();
        List<Improvement> improvements = samples > 0 ? improvements(resolved, asked) : List.of();
        return new Rating(
                build, resolved, capped, flags, improvements, notes, plugIns, SEED, samples, Version.CALC_CORE);
    }

    /** Who supplied the duties asked for, the classes of core, and what fills gaps. */
    private List<PlugIn> sources(List<Duty> asked) {
        List<PlugIn> took = new ArrayList<>();
        for (DutySource s : dutySources) {
            if (s.duties().stream().anyMatch(asked::contains)) {
                took.add(new PlugIn("DutySource", s.id(), s.version(), s.source(), ""));
            }
        }
        coreSources.forEach(s -> took.add(new PlugIn("CoreClassSource", s.id(), s.version(), s.source(), "")));
        if (!standIns.isEmpty()) {
            StringJoiner figures = new StringJoiner(" ");
            standIns.forEach((f, v) -> figures.add(f.key() + "=" + v));
            took.add(new PlugIn("ShopFigures", "shop-figures", figures.toString(), "the shop's own settings", ""));
        }
        return took;
    }

    private static List<Improvement> improvements(Resolved resolved, List<Duty> asked) {
        Plant now = Plant.of(resolved);
        Map<String, Duty> byId = new LinkedHashMap<>();
        Map<String, Double> margins = new LinkedHashMap<>();
        for (Duty d : asked) {
            byId.put(d.id(), d);
            margins.put(d.id(), DutyRater.finiteMarginK(now, d));
        }
        return Advice.of(
                resolved,
                margins,
                (changed, duty) -> DutyRater.finiteMarginK(Plant.of(changed), byId.get(duty)),
                MOST_IMPROVEMENTS);
    }

    private static void keepWidest(List<Note> notes, Note note) {
        for (int i = 0; i < notes.size(); i++) {
            if (notes.get(i).field().equals(note.field())) {
                if (note.widening() > notes.get(i).widening()) {
                    notes.set(i, note);
                }
                return;
            }
        }
        notes.add(note);
    }

    private DutyVerdict judge(DutyOutcome outcome, List<PlugIn> plugIns) {
        List<Finding> findings = new ArrayList<>();
        for (VerdictPolicy p : policies) {
            String problem = "";
            try {
                findings.addAll(p.judge(outcome));
            } catch (RuntimeException e) {
                problem = "gave no answer: " + e;
            }
            ran(plugIns, new PlugIn("VerdictPolicy", p.id(), p.version(), p.source(), problem));
        }
        if (findings.isEmpty()) {
            throw new IllegalStateException("no verdict policy gave an answer for duty "
                    + outcome.duty().id());
        }
        findings.sort(Comparator.comparing(Finding::verdict).reversed());
        Verdict verdict = findings.stream().map(Finding::verdict).reduce(Verdict.GO, Verdict::worse);
        return new DutyVerdict(outcome, verdict, findings);
    }

    private List<Flag> flags(Build build, Resolved resolved, List<DutyVerdict> verdicts, List<PlugIn> plugIns) {
        RiskContext context = new CarUnderReview(resolved, verdicts, this::resolve);
        List<Flag> flags = new ArrayList<>();
        for (RiskRule rule : rules) {
            String problem = "";
            try {
                rule.examine(context).ifPresent(flags::add);
            } catch (RuntimeException e) {
                problem = "gave no answer: " + e;
            }
            ran(plugIns, new PlugIn("RiskRule", rule.id(), rule.version(), rule.source(), problem));
        }
        flags.sort(Comparator.comparing(Flag::weight).reversed());
        return flags;
    }

    /** A flag that counts whatever the duty caps each verdict by its weight. */
    private static DutyVerdict cappedBy(List<Flag> flags, DutyVerdict judged) {
        List<Finding> findings = new ArrayList<>(judged.findings());
        Verdict verdict = judged.verdict();
        for (Flag f : flags) {
            if (f.scope() == Flag.Scope.EVERY_DUTY && f.weight() != Flag.Weight.REMARK) {
                Verdict best = f.weight() == Flag.Weight.STOP ? Verdict.NO_GO : Verdict.GO_WITH_CONDITIONS;
                findings.add(new Finding(
                        Finding.Code.RISK_FLAG,
                        best,
                        SiFigure.count(1),
                        VerdictText.RISK_FLAG.with(f.title()),
                        f.advice()));
                verdict = verdict.worse(best);
            }
        }
        findings.sort(Comparator.comparing(Finding::verdict).reversed());
        return new DutyVerdict(judged.outcome(), verdict, findings);
    }

    private static void ran(List<PlugIn> plugIns, PlugIn plugIn) {
        plugIns.removeIf(p -> p.kind().equals(plugIn.kind())
                && p.id().equals(plugIn.id())
                && p.problem().isEmpty());
        plugIns.add(plugIn);
    }

    /** @return one operating point of the build, steady, without uncertainty */
    public PointRating at(Build build, OperatingPoint point) {
        return PointRater.rate(Plant.of(resolve(build)), point);
    }

    /**
     * The working of one operating point, from the engine's fuel to the margins: each quantity with its name, symbol, unit,
     * value and source.
     *
     * @param build what is known of the car
     * @param duty the duty
     * @param pointId one of its operating points
     * @return the working by sections; without a steady state only what the point asks of the car
     * @throws IllegalArgumentException when the duty has no such point
     */
    public List<WorkingSection> working(Build build, Duty duty, String pointId) {
        return PointWorking.of(Plant.of(resolve(build)), duty.point(pointId));
    }

    /**
     * @return whether coolant must pass this car's radiator slowly: heat and temperature drop against coolant flow, one to
     *     three passes, and what the thermostat does, at an operating point of the duty
     * @throws IllegalArgumentException when the duty has no such point
     */
    public SlowCoolant slowCoolant(Build build, Duty duty, String pointId) {
        return SlowCoolantTable.of(Plant.of(resolve(build)), duty.point(pointId));
    }

    /**
     * @return coolant margin that decides the duty, without uncertainty [K]; without a steady state that of the hottest
     *     temperature tried, which is only a bound
     */
    public double marginK(Build build, Duty duty) {
        return DutyRater.finiteMarginK(Plant.of(resolve(build)), duty);
    }

    /** @return whether a car has no steady state where the duty needs one, so that its margin is only a bound */
    public boolean isBound(Build build, Duty duty) {
        return Double.isInfinite(DutyRater.margins(Plant.of(resolve(build)), duty)[0]);
    }

    /** @return how many degrees of margin each difference of the two builds cost or gained for the duty */
    public Attribution compare(Build before, Build after, Duty duty) {
        return Shares.between(before, after, b -> marginK(b, duty));
    }

    /**
     * The run of a rated duty with a moment each second, so that the current of fans that start is seen.
     *
     * @param rating a rating of this rater
     * @param outcome one of its duties
     * @return the run with a trace; empty for a duty without a schedule
     */
    public Optional<RunResult> traced(Rating rating, DutyOutcome outcome) {
        return outcome.run().map(r -> RunSolver.run(Plant.of(rating.resolved()), outcome.duty(), TRACED));
    }

    /**
     * @param rating a rating of this rater
     * @param outcome one of its duties
     * @return the hottest day on which the car is expected to hold the duty, judged as the duty is; its sign against the day that
     *     was rated is that of the margin
     */
    public HottestDay hottestDay(Rating rating, DutyOutcome outcome) {
        return DayThatHolds.of(rating.resolved(), outcome);
    }

    /**
     * What is most likely behind a car that came back hot, and what to test next.
     *
     * @param build what is known of the car
     * @param seen what was seen: words, a reading, what tests have shown since
     * @return every cause that the car can have, the likeliest first; the same for the same values
     * @throws IllegalArgumentException when this rater knows no cause that the car can have
     */
    public Ranking causes(Build build, Sighting seen) {
        return Diagnosis.of(resolve(build), seen, causes, SEED);
    }

    /**
     * @param build what is known of the car
     * @param duty a duty
     * @param samples number of samples, at least one
     * @return what the car is expected to do, and how surely, before anybody judges it
     */
    public DutyOutcome expected(Build build, Duty duty, int samples) {
        Resolved car = resolve(build);
        return DutyRater.sampled(
                car, DutyRater.outcome(Plant.of(car), duty), new Samples(samples, samples, List.of(), SEED));
    }

    /**
     * A rated duty's schedule driven again with other fan controls, sensors, set points and faults.
     *
     * @param rating a rating of this rater
     * @param outcome one of its duties
     * @return all that apply to the car at the duty, judged as the rating is; none without a schedule or electric fans
     */
    public List<DrivenAgain> whatIfs(Rating rating, DutyOutcome outcome) {
        DutyVerdict rated = rating.duty(outcome.duty().id());
        return WhatIfs.of(rating.resolved(), rated, (car, changed) -> verdict(rating.build(), car, changed));
    }

    /** The verdict of this rater's policies and rules on a car at one duty. */
    private Verdict verdict(Build build, Resolved car, DutyOutcome outcome) {
        List<PlugIn> nobody = new ArrayList<>();
        DutyVerdict judged = judge(outcome, nobody);
        return cappedBy(flags(build, car, List.of(judged), nobody), judged).verdict();
    }

    /**
     * @param build what is known of the car
     * @param duty the duty whose steady points are looked at
     * @return which numbers that nobody measured leave the coolant margin most unsure, the worst first
     */
    public List<WorthMeasuring> worthMeasuring(Build build, Duty duty) {
        return new NextToMeasure((b, point) -> at(b, point).coolantMarginK()).of(resolve(build), duty);
    }

    /**
     * @param build what is known of the car
     * @param improvementId of an {@link Improvement} of a rating
     * @return the improvement as values of fields; empty when there is no such improvement or the car has no use for it
     */
    public Optional<Plan> plan(Build build, String improvementId) {
        return Advice.plan(resolve(build), improvementId);
    }

    /** @return probabilities of passing the coolant limit at which a verdict of these policies may turn, the smallest first */
    public List<Double> turns() {
        return policies.stream()
                .flatMap(p -> p.turns().stream())
                .distinct()
                .sorted()
                .toList();
    }

    /** @return the curves of a car about one of its steady states */
    public CoolingCurves curves(Resolved car, CoolingCurves.State state) {
        return CurvesAround.of(Plant.of(car), state);
    }

    /**
     * @param kind how the fans are switched
     * @param values what is known of the fan control [SI], NaN where nothing is
     * @return what the sensor of the fans feels when they start [K]; empty when no temperature decides it
     * @throws headertank.calc.quantity.OutOfRangeException when the values make no control
     */
    public static OptionalDouble fansStartK(FanControlKind kind, ToDoubleFunction<BuildField> values) {
        return FanControlOf.of(kind, values).startK();
    }

    /**
     * @param place where a sensor sits
     * @param engineOutK coolant out of the engine [K]
     * @param radiatorOutK coolant out of the radiator [K]
     * @param ambientK air around the car [K]
     * @param radiatorM3PerS coolant through the radiator [m3/s]
     * @return what the sensor shows once settled [K]
     */
    public static double sensorShowsK(
            SensorPlacement place, double engineOutK, double radiatorOutK, double ambientK, double radiatorM3PerS) {
        return SensorReading.steadyK(place, engineOutK, radiatorOutK, ambientK, radiatorM3PerS);
    }

    /** @return what a sensor at this place shows in the steady state [K] */
    public static double sensorShowsK(SensorPlacement place, Balance.Steady s) {
        return sensorShowsK(
                place,
                s.engineOutK(),
                s.coolant().radiatorOutK(),
                s.ambientK(),
                s.coolant().radiatorM3PerS());
    }

    /**
     * What a technician should read off this car when it is started cold and left idling in the workshop.
     *
     * @param build what is known of the car
     * @param ambientK air in the workshop, within what {@link BuildField#AMBIENT} allows [K]
     * @return expected readings with their tolerances, the same for the same values
     * @throws headertank.calc.quantity.InputException for an ambient outside that
     */
    public IdleExpectation idleInWorkshop(Build build, double ambientK) {
        Resolved here = resolve(build.inAir(ambientK));
        return IdleInWorkshop.of(here, IDLE_SAMPLES, SEED);
    }
}
