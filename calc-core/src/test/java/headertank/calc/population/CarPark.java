package headertank.calc.population;

import static headertank.calc.quantity.Physics.kelvin;

import headertank.calc.Rater;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.choice.YesNo;
import headertank.calc.duty.Duty;
import headertank.calc.duty.StandardDuties;
import headertank.calc.quantity.Stated;
import headertank.calc.verdict.Verdict;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937c;

/**
 * A generated car park: groups of cars about which everybody in the trade knows the answer, as their owners would bring them
 * to a shop. Healthy cars must mostly pass and hopeless ones never.
 *
 * <p>The population was written down before the models were changed to meet it and is not to be moved to suit them. Every
 * distribution is a guess of ours with its mark; {@code from memory} stands for what catalogues of replacement parts and
 * handbooks of such cars say, not looked up again. Numbers are drawn from a normal distribution cut at two standard
 * deviations, or evenly where a range is given. What the desk types is what a shop can see or read: sizes of the core and
 * the fans with a ruler, engine and cap off their plates. What it cannot see stays unknown, and at half of the street cars
 * nobody measures core and fans either: the desk types engine, mass and where the car lives.
 */
public final class CarPark {

    /** One kind of car with a known answer. */
    public enum Group {
        /** Stock, petrol or turbo petrol or turbo diesel, 1996 to today. */
        HEALTHY_MODERN_STREET(StandardDuties.STREET),
        /** Stock, before 1985, fan on the engine. */
        HEALTHY_OLD_STREET(StandardDuties.STREET),
        /** Built by somebody who knows how, for laps. */
        WELL_BUILT_TRACK(StandardDuties.TRACK),
        /** Built by somebody who knows how, for drifting. */
        WELL_BUILT_DRIFT(StandardDuties.DRIFT),
        /** A stock street car whose core is four fifths shut by mud or bent fins. */
        HOPELESS_BLOCKED(StandardDuties.STREET),
        /** A strong drift car with the core of a town car. */
        HOPELESS_SMALL_CORE(StandardDuties.DRIFT),
        /** A track car whose core gets hardly any air in or out. */
        HOPELESS_NO_AIR(StandardDuties.TRACK),
        /** A track car with a pump that hardly pumps. */
        HOPELESS_NO_FLOW(StandardDuties.TRACK),
        /** A stock street car whose electric fans do not turn. */
        FANS_OUT(StandardDuties.STREET);

        private final Duty duty;

        Group(Duty duty) {
            this.duty = duty;
        }

        /** @return what the car is rated for */
        public Duty duty() {
            return duty;
        }
    }

    /**
     * One car of the park.
     *
     * @param build what the desk types
     * @param asBuilt whether its cooling is as its maker built it
     * @param notHotUpToK hottest day on which it is known not to have run hot, within the last year [K]; empty when nobody says
     */
    public record Car(Build build, boolean asBuilt, OptionalDouble notHotUpToK) {}

    /** What a desk leaves out when nobody opens the hood with a ruler. */
    private static final List<BuildField> SIZES = List.of(
            BuildField.CORE_WIDTH,
            BuildField.CORE_HEIGHT,
            BuildField.CORE_DEPTH,
            BuildField.FAN_COUNT,
            BuildField.FAN_DIAMETER);

    private final RandomGenerator random;

    private CarPark(long seed) {
        this.random = new Well19937c(seed);
    }

    /** @return so many cars of a group; the same seed gives the same cars, a larger count begins with the smaller one's */
    public static List<Car> cars(Group group, int count, long seed) {
        List<Car> cars = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            cars.add(new CarPark(seed + 1000L * group.ordinal() + 7919L * i).car(group));
        }
        return cars;
    }

    private Car car(Group group) {
        return switch (group) {
            case HEALTHY_MODERN_STREET -> healthy(modernStreet());
            case HEALTHY_OLD_STREET -> healthy(oldStreet());
            case WELL_BUILT_TRACK -> built(wellBuilt(CarClass.TRACK));
            case WELL_BUILT_DRIFT -> built(wellBuilt(CarClass.DRIFT));
            case HOPELESS_BLOCKED ->
                built(modernStreet().set(BuildField.CORE_BLOCKED, Stated.measured(between(0.78, 0.88))));
            case HOPELESS_SMALL_CORE -> built(smallCore());
            case HOPELESS_NO_AIR ->
                built(wellBuilt(CarClass.TRACK)
                        .set(BuildField.AIR_INLET, Stated.measured(between(0.012, 0.022)))
                        .set(BuildField.AIR_EXIT_AREA, Stated.measured(between(0.012, 0.022)))
                        .seen(BuildField.AIR_EXIT, "NO_WAY_OUT"));
            case HOPELESS_NO_FLOW ->
                built(wellBuilt(CarClass.TRACK)
                        .set(BuildField.PUMP_FLOW, Stated.measured(between(3e-4, 5e-4)))
                        .set(BuildField.PUMP_HEAD, Stated.measured(2e4)));
            case FANS_OUT -> built(fansOut());
        };
    }

    /** Four of five owners drove it through last summer: hottest day even between 29 and 36 deg C (modelling choice). */
    private Car healthy(Build.Builder b) {
        if (random.nextDouble() < 0.5) {
            SIZES.forEach(b::unknown);
        }
        double day = kelvin(between(29, 36));
        boolean known = random.nextDouble() < 0.8;
        b.seen(BuildField.AS_BUILT, YesNo.YES);
        if (known) {
            b.set(BuildField.NOT_HOT_DAY, Stated.measured(day));
        }
        return new Car(b.build(), true, known ? OptionalDouble.of(day) : OptionalDouble.empty());
    }

    private static Car built(Build.Builder b) {
        return new Car(b.build(), false, OptionalDouble.empty());
    }

    /**
     * Power 50 to 280 kW, most around 100 (from memory); 60 kW per litre without a turbocharger, 85 with, 45 diesel (from
     * memory); core face 0.13 m2 and 0.85e-3 m2 per kW within 8 %, 1.6 to 1 (from memory, replacement cores from 0.16 m2 on a
     * town car to 0.36 m2 on a large one); depth 16 mm below 90 kW, 20 to 180, 28 above, within 10 % (from memory); mass with
     * driver 875 kg and 4.2 kg per kW within 7 % (from memory); one fan up to 110 kW, else two of less diameter; hottest day
     * where the car lives 31 to 38 deg C (modelling choice).
     */
    private Build.Builder modernStreet() {
        double kind = random.nextDouble();
        boolean diesel = kind > 0.8;
        boolean turbo = !diesel && kind > 0.5;
        double kilowatts = Math.max(50, Math.min(280, 100 * Math.exp(normal(0, 0.40))));
        double perLitre = normal(diesel ? 45 : turbo ? 85 : 60, 6);
        double face = (0.13 + 0.85e-3 * kilowatts) * normal(1, 0.08);
        double depth = (kilowatts < 90 ? 0.016 : kilowatts < 180 ? 0.020 : 0.028) * normal(1, 0.10);
        Build.Builder b = street(CarClass.MODERN_STREET, kilowatts, perLitre, face, depth, 1.6)
                .seen(BuildField.ENGINE_CLASS, diesel ? "DIESEL_TURBO" : turbo ? "PETROL_TURBO" : "PETROL_NATURAL")
                .seen(BuildField.FUEL, diesel ? "DIESEL" : "PETROL_E10")
                .set(BuildField.ENGINE_SPEED, Stated.datasheet(normal(diesel ? 4000 : turbo ? 5500 : 6000, 250) / 60))
                .set(BuildField.CAR_MASS, Stated.datasheet((875 + 4.2 * kilowatts) * normal(1, 0.07)))
                .set(BuildField.AMBIENT, Stated.measured(kelvin(between(31, 38))))
                .seen(BuildField.FAN_DRIVE, "ELECTRIC")
                .seen(BuildField.CORE_CLASS, "thin-original")
                .seen(BuildField.THERMOSTAT, "FITTED")
                .seen(BuildField.CONDENSER, "YES");
        boolean two = kilowatts > 110;
        double height = Math.sqrt(face / 1.6);
        b.set(BuildField.FAN_COUNT, Stated.measured(two ? 2 : 1))
                .set(BuildField.FAN_DIAMETER, Stated.measured(height * (two ? 0.82 : 0.95)))
                .seen(BuildField.OIL_COOLER, kilowatts > 90 ? "COOLANT" : "NONE");
        return b;
    }

    /**
     * Power 40 to 180 kW, most around 75 (from memory); 30 to 45 kW per litre (from memory); core face 0.13 m2 and 1.2e-3 m2
     * per kW within 8 %, nearly square (from memory); copper-brass, four of five louvred, 40 to 52 mm deep; mass 850 kg and 5.5
     * kg per kW; clutch fan as wide as the core is high; cap 50 to 100 kPa; hottest day 30 to 36 deg C: such cars stay at home
     * on the worst (modelling choice).
     */
    private Build.Builder oldStreet() {
        double kilowatts = Math.max(40, Math.min(180, 75 * Math.exp(normal(0, 0.35))));
        double face = (0.13 + 1.2e-3 * kilowatts) * normal(1, 0.08);
        return street(CarClass.OLD_STREET, kilowatts, normal(38, 4), face, between(0.040, 0.052), 1.25)
                .seen(BuildField.ENGINE_CLASS, "PETROL_OLD")
                .seen(BuildField.FUEL, "PETROL_E10")
                .set(BuildField.ENGINE_SPEED, Stated.datasheet(normal(5000, 300) / 60))
                .set(BuildField.CAR_MASS, Stated.datasheet((850 + 5.5 * kilowatts) * normal(1, 0.07)))
                .set(BuildField.AMBIENT, Stated.measured(kelvin(between(30, 36))))
                .seen(BuildField.FAN_DRIVE, "CLUTCH")
                .set(BuildField.FAN_DIAMETER, Stated.measured(Math.sqrt(face / 1.25) * normal(0.95, 0.03)))
                .seen(BuildField.CORE_CLASS, random.nextDouble() < 0.8 ? "copper-brass-louvred" : "old-copper-brass")
                .set(BuildField.CAP_PRESSURE, Stated.datasheet(between(50e3, 100e3)));
    }

    private Build.Builder street(
            CarClass carClass, double kilowatts, double perLitre, double face, double depth, double aspect) {
        return Build.forCar(carClass)
                .set(BuildField.ENGINE_POWER, Stated.datasheet(1000 * kilowatts))
                .set(BuildField.ENGINE_DISPLACEMENT, Stated.datasheet(1e-3 * kilowatts / perLitre))
                .set(BuildField.CORE_WIDTH, Stated.measured(Math.sqrt(face * aspect)))
                .set(BuildField.CORE_HEIGHT, Stated.measured(Math.sqrt(face / aspect)))
                .set(BuildField.CORE_DEPTH, Stated.measured(depth));
    }

    /**
     * Track: 140 to 300 kW, drift: 220 to 380 kW (from memory); the largest core that fits between the frame rails, 0.62 to
     * 0.72 by 0.42 to 0.50 m (from memory), dense fins 42 to 56 mm deep or two rows; two fans of 0.33 to 0.38 m at 18 to 26 A;
     * inlet half of the face, sealed duct, vent in the hood with 0.7 of the face; oil-to-air cooler of 300 to 500 W/K; pump of
     * 1.5 l/min per kW; cap 130 kPa; days of 24 to 33 deg C (all: common practice, no source).
     */
    private Build.Builder wellBuilt(CarClass carClass) {
        boolean track = carClass == CarClass.TRACK;
        double kilowatts = track ? between(140, 300) : between(220, 380);
        boolean turbo = random.nextDouble() < 0.5;
        double perLitre = turbo ? normal(115, 12) : normal(track ? 80 : 68, 5);
        double width = between(0.62, 0.72);
        double height = between(0.42, 0.50);
        boolean twoRow = random.nextDouble() < 0.5;
        double face = width * height;
        return Build.forCar(carClass)
                .set(BuildField.ENGINE_POWER, Stated.measured(1000 * kilowatts))
                .set(BuildField.ENGINE_DISPLACEMENT, Stated.datasheet(1e-3 * kilowatts / perLitre))
                .seen(BuildField.ENGINE_CLASS, turbo ? "PETROL_TURBO" : "PETROL_NATURAL")
                .set(BuildField.ENGINE_SPEED, Stated.measured((track ? 7000 : 6700) / 60.0))
                .seen(BuildField.FUEL, !track && random.nextDouble() < 0.4 ? "E85" : "PETROL_E10")
                .set(BuildField.AMBIENT, Stated.measured(kelvin(between(24, 33))))
                .seen(BuildField.CORE_CLASS, twoRow ? "two-row-aluminium" : "dense-aluminium")
                .set(BuildField.CORE_WIDTH, Stated.measured(width))
                .set(BuildField.CORE_HEIGHT, Stated.measured(height))
                .set(BuildField.CORE_DEPTH, Stated.measured(twoRow ? between(0.050, 0.058) : between(0.042, 0.050)))
                .seen(BuildField.FAN_DRIVE, "ELECTRIC")
                .set(BuildField.FAN_COUNT, Stated.measured(2))
                .set(BuildField.FAN_DIAMETER, Stated.measured(between(0.33, Math.min(0.38, 0.5 * width))))
                .set(BuildField.FAN_CURRENT, Stated.measured(between(18, 26)))
                .set(BuildField.FAN_COVER, Stated.measured(between(0.85, 1.0)))
                .seen(BuildField.FAN_FLAPS, "YES")
                .seen(BuildField.AIR_DUCT, "SEALED")
                .set(BuildField.AIR_INLET, Stated.measured(face * between(0.48, 0.60)))
                .seen(BuildField.AIR_EXIT, "HOOD_VENT")
                .set(BuildField.AIR_EXIT_AREA, Stated.measured(face * between(0.65, 0.80)))
                .seen(BuildField.OIL_COOLER, "AIR")
                .set(BuildField.OIL_COOLER_CONDUCTANCE, Stated.datasheet(between(300, 500)))
                .set(BuildField.PUMP_FLOW, Stated.datasheet(1.5 / 60e3 * kilowatts))
                .set(BuildField.CAP_PRESSURE, Stated.datasheet(130e3))
                .set(BuildField.COOLANT_GLYCOL, Stated.measured(between(0.2, 0.4)))
                .set(BuildField.ALTERNATOR, Stated.datasheet(between(110, 150)));
    }

    /** 330 to 450 kW behind the core of a car of 55 kW: 0.50 by 0.32 m, 16 mm. */
    private Build.Builder smallCore() {
        double kilowatts = between(330, 450);
        return wellBuilt(CarClass.DRIFT)
                .set(BuildField.ENGINE_POWER, Stated.measured(1000 * kilowatts))
                .set(BuildField.ENGINE_DISPLACEMENT, Stated.datasheet(1e-3 * kilowatts / 70))
                .seen(BuildField.ENGINE_CLASS, "PETROL_NATURAL")
                .seen(BuildField.FUEL, "PETROL_E10")
                .seen(BuildField.CORE_CLASS, "thin-original")
                .set(BuildField.CORE_WIDTH, Stated.measured(0.50))
                .set(BuildField.CORE_HEIGHT, Stated.measured(0.32))
                .set(BuildField.CORE_DEPTH, Stated.measured(0.016))
                .set(BuildField.FAN_COUNT, Stated.measured(1))
                .set(BuildField.FAN_DIAMETER, Stated.measured(0.30))
                .set(BuildField.FAN_CURRENT, Stated.measured(12))
                .set(BuildField.AIR_INLET, Stated.measured(0.07))
                .set(BuildField.AIR_EXIT_AREA, Stated.measured(0.08))
                .seen(BuildField.AIR_EXIT, "UNDER_CAR");
    }

    private Build.Builder fansOut() {
        return modernStreet()
                .seen(BuildField.FAN_DRIVE, "NONE")
                .unknown(BuildField.FAN_COUNT)
                .unknown(BuildField.FAN_DIAMETER);
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private double normal(double mean, double sigma) {
        return mean + sigma * Math.max(-2, Math.min(2, random.nextGaussian()));
    }

    /** @return how many of so many cars of a group get which verdict for its duty */
    public static Map<Verdict, Integer> verdicts(Rater rater, Group group, int count, int samples) {
        Map<Verdict, Integer> counts = new EnumMap<>(Verdict.class);
        for (Verdict v : Verdict.values()) {
            counts.put(v, 0);
        }
        for (Car car : cars(group, count, SEED)) {
            counts.merge(
                    rater.rate(car.build(), List.of(group.duty()), samples)
                            .duty(group.duty().id())
                            .verdict(),
                    1,
                    Integer::sum);
        }
        return counts;
    }

    /** @return the group's row of the table in the docs */
    static String row(Group group, int count, Map<Verdict, Integer> v) {
        return String.format(
                Locale.ROOT,
                "| %s | %d | %.1f %% | %.1f %% | %.1f %% |",
                group.name().toLowerCase(Locale.ROOT).replace('_', ' '),
                count,
                100.0 * v.get(Verdict.GO) / count,
                100.0 * v.get(Verdict.GO_WITH_CONDITIONS) / count,
                100.0 * v.get(Verdict.NO_GO) / count);
    }

    /** Seed of the printed table. */
    public static final long SEED = 20261127L;
}
