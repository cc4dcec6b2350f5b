package headertank.calc.transients;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.choice.FanDrive;
import headertank.calc.choice.YesNo;
import headertank.calc.duty.Demand;
import headertank.calc.duty.Duty;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.duty.Schedule;
import headertank.calc.electric.ElectricBalance;
import headertank.calc.quantity.Physics;
import headertank.calc.rating.Plant;
import headertank.calc.result.IdleExpectation.Figure;
import headertank.calc.result.RunResult;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * A car that is started cold in the workshop and left idling, air conditioning off, until its fans have run for a while: what
 * a technician can read off it with a watch, the car's gauge, a clamp meter and a contact thermometer.
 *
 * <p>The run is that of {@link RunSolver} with every mass at ambient temperature; the thermostat counts as open from twice the lift that it leaks with when shut, readings with the fans on are means from 5 s to two
 * minutes after they start (modelling choices).
 *
 * @param figures what happens within an hour; a figure that the car does not have, or does not reach, is absent
 */
public record IdleWarmUp(Map<Figure, Double> figures) {

    /** Longest time looked at [s]; modelling choice. */
    public static final double HORIZON_S = 3600;

    /** Electric power over shaft power of an alternator at idle; from memory, 0.5 to 0.6 [-]. */
    private static final double ALTERNATOR_EFFICIENCY = 0.55;

    /** What a hydraulic steering pump takes with the wheel straight, and a water pump's belt; guessed [W]. */
    private static final double BELT_W = 150;

    /**
     * Share of a street car's base load that is left with nothing switched on: 20 of the 35 A of a hot day's drive, which hold blower
     * and lights; from memory [-].
     */
    private static final double NOTHING_SWITCHED_ON = 20.0 / 35;

    private static final double OUTPUT_HZ = 2;
    private static final double FIRST_READING_S = 5;
    private static final double LAST_READING_S = 120;

    public IdleWarmUp {
        Map<Figure, Double> copy = new EnumMap<>(Figure.class);
        copy.putAll(figures);
        figures = Collections.unmodifiableMap(copy);
    }

    /** @return the figure, if the car has it and reaches it within the hour */
    public OptionalDouble figure(Figure figure) {
        Double value = figures.get(figure);
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    /**
     * @param plant the car; its ambient is that of the workshop
     * @return what it does when it is started cold
     */
    public static IdleWarmUp of(Plant plant) {
        RunResult run = RunSolver.run(plant, duty(plant), RunSettings.STANDARD.at(OUTPUT_HZ));
        return read(plant, run.trace());
    }

    /**
     * @param car the car
     * @return the same with nothing switched on: where the class of a car with air conditioning stands in for its base load, that without
     *     blower and lights; a base load that somebody stated is taken as it is
     */
    public static Resolved nothingSwitchedOn(Resolved car) {
        return car.is(BuildField.CONDENSER, YesNo.YES) && car.isOfClass(BuildField.BASE_LOAD)
                ? car.with(BuildField.BASE_LOAD, NOTHING_SWITCHED_ON * car.value(BuildField.BASE_LOAD))
                : car;
    }

    /**
     * @param car the car
     * @return idling in the workshop with nothing switched on: its base load through the alternator, and 150 W for the belt; one
     *     standard deviation of the heat that this leaves open 0.03: half of the belt, of a shaft power of 2 kW (derived)
     */
    public static OperatingPoint point(Resolved car) {
        double alternatorW = car.value(BuildField.BASE_LOAD) * ElectricBalance.CHARGING_V / ALTERNATOR_EFFICIENCY;
        return new OperatingPoint(
                "workshop", "Idle in the workshop", 0, 0, 0, new Demand.Idle(alternatorW + BELT_W, 0, 0), 0.03);
    }

    /** @return a cold start and an hour of idling for this car */
    static Duty duty(Plant plant) {
        OperatingPoint idle = point(plant.resolved());
        Schedule schedule = new Schedule(
                plant.resolved().value(BuildField.AMBIENT), List.of(new Schedule.Phase(idle.id(), HORIZON_S)));
        return new Duty("workshop", idle.label(), List.of(idle), Optional.of(schedule), "modelling choice");
    }

    private static IdleWarmUp read(Plant plant, List<RunResult.Sample> trace) {
        Map<Figure, Double> figures = new EnumMap<>(Figure.class);
        if (plant.thermostat().fitted()) {
            first(trace, s -> s.thermostatLift() >= 2 * plant.thermostat().leakLift())
                    .ifPresent(i ->
                            figures.put(Figure.THERMOSTAT_OPENS_S, trace.get(i).timeS()));
        }
        OptionalInt at40 = first(trace, s -> s.gaugeK() >= Physics.kelvin(40));
        OptionalInt at80 = first(trace, s -> s.gaugeK() >= Physics.kelvin(80));
        if (at40.isPresent() && at40.getAsInt() > 0 && at80.isPresent()) {
            figures.put(
                    Figure.FROM_40_TO_80_S,
                    trace.get(at80.getAsInt()).timeS()
                            - trace.get(at40.getAsInt()).timeS());
        }
        boolean electric = plant.fanDrive() == FanDrive.ELECTRIC;
        OptionalInt start = electric ? first(trace, s -> s.fanCurrentA() > 0) : OptionalInt.empty();
        if (start.isPresent()) {
            withFansOn(plant, trace, start.getAsInt(), figures);
        } else {
            double end = trace.get(trace.size() - 1).timeS();
            hot(trace.stream().filter(s -> s.timeS() > end - LAST_READING_S).toList(), figures);
        }
        return new IdleWarmUp(figures);
    }

    private static void withFansOn(Plant plant, List<RunResult.Sample> trace, int start, Map<Figure, Double> figures) {
        double startS = trace.get(start).timeS();
        if (plant.control().startK().isPresent()) {
            figures.put(Figure.FANS_START_S, startS);
            hotRise(trace, start).ifPresent(v -> figures.put(Figure.HOT_RISE_K_PER_S, v));
            figures.put(Figure.GAUGE_AT_FAN_START_K, trace.get(start).gaugeK());
        }
        List<RunResult.Sample> on = trace.subList(start, trace.size()).stream()
                .takeWhile(s -> s.fanCurrentA() > 0)
                .toList();
        List<RunResult.Sample> starting =
                on.stream().filter(s -> s.timeS() <= startS + FIRST_READING_S).toList();
        List<RunResult.Sample> after = on.stream()
                .filter(s -> s.timeS() > startS + FIRST_READING_S && s.timeS() <= startS + LAST_READING_S)
                .toList();
        List<RunResult.Sample> steady = after.isEmpty() ? starting : after;
        figures.put(
                Figure.FAN_START_A,
                starting.stream()
                        .mapToDouble(RunResult.Sample::fanCurrentA)
                        .max()
                        .orElseThrow());
        figures.put(
                Figure.FAN_RUNNING_A,
                steady.stream()
                        .mapToDouble(RunResult.Sample::fanCurrentA)
                        .average()
                        .orElseThrow());
        double end = trace.get(trace.size() - 1).timeS();
        boolean always = plant.control().startK().isEmpty();
        hot(always ? on.stream().filter(s -> s.timeS() > end - LAST_READING_S).toList() : steady, figures);
    }

    /** Rise of the gauge between the second stop of the fans and their next start: the first cycle still fills the radiator. */
    private static OptionalDouble hotRise(List<RunResult.Sample> trace, int start) {
        int stops = 0;
        RunResult.Sample lowest = null;
        for (int i = start + 1; i < trace.size(); i++) {
            RunResult.Sample s = trace.get(i);
            boolean on = s.fanCurrentA() > 0;
            boolean was = trace.get(i - 1).fanCurrentA() > 0;
            if (was && !on) {
                stops++;
                lowest = s;
            } else if (!was && on && stops >= 2) {
                return OptionalDouble.of((s.gaugeK() - lowest.gaugeK()) / (s.timeS() - lowest.timeS()));
            } else if (lowest != null && s.gaugeK() < lowest.gaugeK()) {
                lowest = s;
            }
        }
        return OptionalDouble.empty();
    }

    private static void hot(List<RunResult.Sample> samples, Map<Figure, Double> figures) {
        samples.stream()
                .mapToDouble(s -> s.coolantK() - s.radiatorK())
                .average()
                .ifPresent(v -> figures.put(Figure.CORE_DROP_K, v));
        samples.stream()
                .mapToDouble(RunResult.Sample::voltageV)
                .average()
                .ifPresent(v -> figures.put(Figure.VOLTAGE_V, v));
    }

    private static OptionalInt first(List<RunResult.Sample> trace, Predicate<RunResult.Sample> holds) {
        return IntStream.range(0, trace.size())
                .filter(i -> holds.test(trace.get(i)))
                .findFirst();
    }
}
