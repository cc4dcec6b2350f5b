package headertank.calc;

import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.carspec.ControlTable;
import headertank.calc.choice.Ducting;
import headertank.calc.choice.FanControlKind;
import headertank.calc.choice.OilCooling;
import headertank.calc.choice.YesNo;
import headertank.calc.engine.EngineClass;
import headertank.calc.fluid.Fuel;
import headertank.calc.quantity.Chosen;
import headertank.calc.quantity.Provenance;
import headertank.calc.quantity.Stated;
import java.util.List;
import java.util.Map;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937c;

/** Cars for tests: three named ones and a seeded generator of random valid ones. */
public final class Builds {

    private Builds() {}

    /** A road car of 150 kW with everything that matters stated. */
    public static Build road() {
        return base(CarClass.MODERN_STREET, 150e3, 6000, 2.4e-3)
                .set(BuildField.CORE_WIDTH, Stated.measured(0.65))
                .set(BuildField.CORE_HEIGHT, Stated.measured(0.40))
                .set(BuildField.CORE_DEPTH, Stated.measured(0.026))
                .set(BuildField.FIN_PITCH, Stated.measured(1.27e-3))
                .set(BuildField.FAN_COUNT, Stated.measured(1))
                .set(BuildField.FAN_FLOW, Stated.measured(0.80))
                .set(BuildField.FAN_SHUT_OFF, Stated.measured(230))
                .set(BuildField.FAN_DIAMETER, Stated.measured(0.40))
                .set(BuildField.FAN_CURRENT, Stated.measured(20))
                .set(BuildField.FAN_COVER, Stated.measured(1))
                .set(BuildField.AIR_INLET, Stated.measured(0.11))
                .set(BuildField.AIR_EXIT_AREA, Stated.measured(0.13))
                .set(BuildField.PUMP_HEAD, Stated.measured(130e3))
                .set(BuildField.PUMP_FLOW, Stated.measured(4.5e-3))
                .set(BuildField.COOLANT_GLYCOL, Stated.measured(0.493))
                .set(BuildField.THERMOSTAT_OPENING, Stated.measured(357.15))
                .seen(BuildField.OIL_COOLER, OilCooling.COOLANT)
                .build();
    }

    /** A drift car of 450 kW with everything that matters stated. */
    public static Build drift() {
        return base(CarClass.DRIFT, 450e3, 6800, 6.2e-3)
                .set(BuildField.CORE_WIDTH, Stated.measured(0.70))
                .set(BuildField.CORE_HEIGHT, Stated.measured(0.46))
                .set(BuildField.CORE_DEPTH, Stated.measured(0.0528))
                .set(BuildField.CORE_TILT, Stated.measured(Math.toRadians(35)))
                .set(BuildField.FAN_COUNT, Stated.measured(2))
                .set(BuildField.FAN_FLOW, Stated.measured(0.85))
                .set(BuildField.FAN_SHUT_OFF, Stated.measured(260))
                .set(BuildField.FAN_DIAMETER, Stated.measured(0.35))
                .set(BuildField.FAN_CURRENT, Stated.measured(22))
                .set(BuildField.FAN_COVER, Stated.measured(0.85))
                .seen(BuildField.FAN_FLAPS, YesNo.YES)
                .set(BuildField.AIR_INLET, Stated.measured(0.17))
                .set(BuildField.AIR_EXIT_AREA, Stated.measured(0.18))
                .set(BuildField.PUMP_HEAD, Stated.measured(170e3))
                .set(BuildField.PUMP_FLOW, Stated.measured(0.010))
                .set(BuildField.COOLANT_GLYCOL, Stated.measured(0.306))
                .set(BuildField.THERMOSTAT_OPENING, Stated.measured(351.15))
                .seen(BuildField.OIL_COOLER, OilCooling.AIR)
                .set(BuildField.OIL_COOLER_CONDUCTANCE, Stated.measured(355))
                .build();
    }

    /** A turbocharged car of 300 kW for the track with everything that matters stated. */
    public static Build track() {
        return base(CarClass.TRACK, 300e3, 7000, 2.2e-3)
                .seen(BuildField.ENGINE_CLASS, EngineClass.PETROL_TURBO)
                .set(BuildField.CORE_WIDTH, Stated.measured(0.66))
                .set(BuildField.CORE_HEIGHT, Stated.measured(0.42))
                .set(BuildField.CORE_DEPTH, Stated.measured(0.042))
                .set(BuildField.FAN_COUNT, Stated.measured(2))
                .set(BuildField.FAN_FLOW, Stated.measured(0.60))
                .set(BuildField.FAN_SHUT_OFF, Stated.measured(220))
                .set(BuildField.FAN_DIAMETER, Stated.measured(0.30))
                .set(BuildField.FAN_CURRENT, Stated.measured(13))
                .set(BuildField.FAN_COVER, Stated.measured(1))
                .set(BuildField.AIR_INLET, Stated.measured(0.15))
                .set(BuildField.AIR_EXIT_AREA, Stated.measured(0.16))
                .seen(BuildField.AIR_DUCT, Ducting.SEALED)
                .set(BuildField.PUMP_HEAD, Stated.measured(170e3))
                .set(BuildField.PUMP_FLOW, Stated.measured(7e-3))
                .set(BuildField.COOLANT_GLYCOL, Stated.measured(0.306))
                .set(BuildField.THERMOSTAT_OPENING, Stated.measured(351.15))
                .seen(BuildField.OIL_COOLER, OilCooling.AIR)
                .set(BuildField.OIL_COOLER_CONDUCTANCE, Stated.measured(255))
                .build();
    }

    private static Build.Builder base(CarClass carClass, double power, double perMinute, double displacement) {
        return Build.forCar(carClass)
                .seen(BuildField.ENGINE_CLASS, EngineClass.PETROL_NATURAL)
                .set(BuildField.ENGINE_POWER, Stated.measured(power))
                .set(BuildField.ENGINE_SPEED, Stated.measured(perMinute / 60))
                .set(BuildField.ENGINE_DISPLACEMENT, Stated.measured(displacement))
                .seen(BuildField.FUEL, Fuel.PETROL_E10)
                .set(BuildField.CORE_BLOCKED, Stated.measured(0))
                .seen(BuildField.AIR_DUCT, Ducting.PARTLY)
                .set(BuildField.AMBIENT, Stated.measured(303.15))
                .set(BuildField.ALTITUDE, Stated.measured(0))
                .set(BuildField.HUMIDITY, Stated.measured(0))
                .seen(BuildField.CONTROL_KIND, FanControlKind.ALWAYS_ON);
    }

    /**
     * A random valid build: any class, each field stated with a chance of one half, over the whole allowed range of choices
     * and over the middle of the allowed range of numbers, so that parts roughly fit each other.
     *
     * @param seed the same seed gives the same build
     */
    public static Build random(long seed) {
        RandomGenerator random = new Well19937c(seed);
        CarClass carClass = CarClass.values()[random.nextInt(CarClass.values().length)];
        Build.Builder builder = Build.forCar(carClass);
        Map<String, ?> cores = Rater.standard().coreClasses();
        List<String> coreIds = cores.keySet().stream().sorted().toList();
        for (BuildField f : BuildField.values()) {
            boolean stated = random.nextBoolean();
            double share = random.nextDouble();
            int option = random.nextInt(1000);
            Provenance from = Provenance.values()[random.nextInt(4)];
            if (!stated) {
                continue;
            }
            if (f == BuildField.CORE_CLASS) {
                builder.set(f, new Chosen(coreIds.get(option % coreIds.size()), from));
            } else if (f.isChoice()) {
                builder.set(f, new Chosen(f.options().get(option % f.options().size()), from));
            } else {
                builder.set(f, new Stated(number(f, share), from, null));
            }
        }
        return fitTogether(builder);
    }

    private static double number(BuildField f, double share) {
        double min = f.allowed().min();
        double max = f.allowed().max();
        double v = min > 0 && max / min > 20 ? min * Math.pow(max / min, share) : min + share * (max - min);
        return f.kind() == headertank.calc.quantity.FigureKind.COUNT ? Math.rint(v) : v;
    }

    /** Takes back what contradicts: such builds are refused, which other tests show. */
    private static Build fitTogether(Build.Builder builder) {
        for (ControlTable.Row row : ControlTable.ROWS) {
            builder.unknown(row.temperature()).unknown(row.duty());
        }
        builder.unknown(BuildField.CONTROL_LOW_SET)
                .unknown(BuildField.PUMP_RUN_ON)
                .unknown(BuildField.OIL_THERMOSTAT_OPEN)
                .unknown(BuildField.ENGINE_IDLE)
                .unknown(BuildField.FAN_START_CURRENT)
                .unknown(BuildField.LOWEST_AMBIENT)
                .unknown(BuildField.FUEL)
                .unknown(BuildField.TUBE_ROWS)
                .unknown(BuildField.ENGINE_EFFICIENCY);
        return builder.build();
    }
}
