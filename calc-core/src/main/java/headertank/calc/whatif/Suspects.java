package headertank.calc.whatif;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.choice.FanDrive;
import headertank.calc.choice.ThermostatFitting;
import headertank.calc.duty.Duty;
import headertank.calc.judged.DutyRater;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.rating.Plant;
import headertank.calc.result.Suspect;
import headertank.calc.result.Suspect.Kind;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What each usual fault would cost a car at a duty, so that a car that runs hotter than its values say can be held against them. How
 * far each fault goes is a modelling choice: so far as a mechanic still calls it one.
 */
public final class Suspects {

    private static final double SHUT_SHARE = 0.25;
    private static final double FOULED = 4;
    private static final double LEAST_FOULING = 1e-4;
    private static final double WEAK_SHARE = 0.5;
    private static final double LATE_K = 15;

    private Suspects() {}

    /**
     * @param car every value that is known of it
     * @param duty the duty at which it ran hot
     * @return each fault that it can have, the costliest first; those that leave what the models cover are left out
     */
    public static List<Suspect> of(Resolved car, Duty duty) {
        double now = DutyRater.finiteMarginK(Plant.of(car), duty);
        List<Suspect> suspects = new ArrayList<>();
        faulty(car).forEach((kind, with) -> {
            try {
                double cost = now - DutyRater.finiteMarginK(Plant.of(with), duty);
                suspects.add(new Suspect(kind, Math.max(0, cost)));
            } catch (OutOfRangeException beyond) {
                return;
            }
        });
        suspects.sort((a, b) -> Double.compare(b.costK(), a.costK()));
        return List.copyOf(suspects);
    }

    private static Map<Kind, Resolved> faulty(Resolved car) {
        Map<Kind, Resolved> faulty = new EnumMap<>(Kind.class);
        double fans = car.value(BuildField.FAN_COUNT);
        if (car.is(BuildField.FAN_DRIVE, FanDrive.ELECTRIC) && fans > 1) {
            double left = (fans - 1) / fans;
            faulty.put(
                    Kind.ONE_FAN_OUT,
                    set(
                            car.with(BuildField.FAN_COUNT, fans - 1),
                            BuildField.FAN_COVER,
                            left * car.value(BuildField.FAN_COVER)));
        }
        if (!car.is(BuildField.FAN_DRIVE, FanDrive.NONE)) {
            faulty.put(Kind.FANS_OUT, car.with(BuildField.FAN_DRIVE, FanDrive.NONE));
        }
        double open = 1 - car.value(BuildField.CORE_BLOCKED);
        faulty.put(Kind.CORE_SHUT, set(car, BuildField.CORE_BLOCKED, 1 - (1 - SHUT_SHARE) * open));
        double deposits = car.value(BuildField.CORE_FOULING);
        faulty.put(Kind.TUBES_FOULED, set(car, BuildField.CORE_FOULING, Math.max(LEAST_FOULING, FOULED * deposits)));
        faulty.put(
                Kind.PUMP_WEAK,
                set(
                        set(car, BuildField.PUMP_FLOW, WEAK_SHARE * car.value(BuildField.PUMP_FLOW)),
                        BuildField.PUMP_HEAD,
                        WEAK_SHARE * WEAK_SHARE * car.value(BuildField.PUMP_HEAD)));
        if (car.is(BuildField.THERMOSTAT, ThermostatFitting.FITTED)) {
            faulty.put(
                    Kind.THERMOSTAT_LATE,
                    set(car, BuildField.THERMOSTAT_OPENING, car.value(BuildField.THERMOSTAT_OPENING) + LATE_K));
        }
        return faulty;
    }

    private static Resolved set(Resolved car, BuildField field, double value) {
        return car.with(field, field.allowed().clamp(value));
    }
}
