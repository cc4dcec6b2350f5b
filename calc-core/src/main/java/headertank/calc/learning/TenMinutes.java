package headertank.calc.learning;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.duty.Demand;
import headertank.calc.duty.Duty;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.evidence.DriveLog;
import headertank.calc.quantity.Physics;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A log as a shop would make it next: ten minutes at 20 deg C with a warm car. A duty in which a driver decides how hard it is is driven,
 * 45 s of every two minutes where the car also idles in it, else for eight minutes on end; any other is a drive through a town. Pressures are
 * a straight line of the load, 30 kPa to 100 (modelling choices; what counts is what such a log would tell).
 */
final class TenMinutes {

    private static final double AMBIENT_K = Physics.kelvin(20);
    private static final double AMBIENT_SIGMA_K = 2;
    private static final double BELOW_OPENING_K = 5;
    private static final int LONG_S = 600;

    private TenMinutes() {}

    /** @return the log; its readings do not count */
    static DriveLog of(Resolved car, Duty duty) {
        Optional<OperatingPoint> hard = duty.points().stream()
                .filter(p -> p.demand() instanceof Demand.Mix)
                .findFirst();
        boolean idles = duty.points().stream().anyMatch(OperatingPoint::idles);
        List<DriveLog.Row> rows = new ArrayList<>();
        for (int t = 0; t <= LONG_S; t++) {
            boolean drives = idles ? t % 120 >= 60 && t % 120 < 105 : t >= 60 && t < 540;
            rows.add(hard.isEmpty() ? town(car, t) : drives ? hard(car, hard.get(), t) : idle(car, t));
        }
        DriveLog log = new DriveLog(AMBIENT_K, AMBIENT_SIGMA_K, rows);
        return hard.isEmpty() ? log : log.driving(duty);
    }

    private static DriveLog.Row hard(Resolved car, OperatingPoint point, int t) {
        List<Demand.Mode> modes = ((Demand.Mix) point.demand()).modes();
        double in = t % 9 / 9.0;
        int mode = 0;
        for (double end = modes.get(0).timeShare(); mode < modes.size() - 1 && in >= end; ) {
            mode++;
            end += modes.get(mode).timeShare();
        }
        Demand.Mode m = modes.get(mode);
        return row(car, t, m.speedShare() * car.value(BuildField.ENGINE_SPEED), m.powerShare(), point.roadSpeedMPerS());
    }

    private static DriveLog.Row town(Resolved car, int t) {
        return t % 120 < 30
                ? idle(car, t)
                : row(car, t, 2.5 * car.value(BuildField.ENGINE_IDLE), t % 20 < 8 ? 0.4 : 0.1, 13);
    }

    private static DriveLog.Row idle(Resolved car, int t) {
        return row(car, t, car.value(BuildField.ENGINE_IDLE), 0.05, 0);
    }

    private static DriveLog.Row row(Resolved car, int t, double enginePerS, double load, double roadMPerS) {
        double coolant = car.value(BuildField.THERMOSTAT_OPENING) - BELOW_OPENING_K;
        return new DriveLog.Row(t, coolant, enginePerS, 30e3 + 70e3 * load, AMBIENT_K + 10, roadMPerS);
    }
}
