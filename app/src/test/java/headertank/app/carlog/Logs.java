package headertank.app.carlog;

import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.choice.AirExit;
import headertank.calc.choice.BypassState;
import headertank.calc.choice.FanControlKind;
import headertank.calc.choice.FanMounting;
import headertank.calc.choice.SensorPlacement;
import headertank.calc.choice.ThermostatFitting;
import headertank.calc.engine.EngineClass;
import headertank.calc.fluid.Fuel;
import headertank.calc.quantity.Stated;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.springframework.core.io.ClassPathResource;

/** Texts of logs for tests. */
public final class Logs {

    private Logs() {}

    /** A warm engine that idles for so many seconds and grows a little warmer. */
    public static String standing(int seconds) {
        return idling(seconds, 85, 85 + seconds / 60);
    }

    /** An engine that idles for so many seconds while its coolant goes from one temperature to another. */
    public static String idling(int seconds, int fromC, int toC) {
        StringBuilder log = new StringBuilder("Time [s],Coolant [°C],RPM,MAP [kPa],IAT [°C],Speed [km/h]\n");
        for (int t = 0; t <= seconds; t++) {
            log.append(t)
                    .append(',')
                    .append(fromC + (toC - fromC) * t / seconds)
                    .append(",850,34,30,0\n");
        }
        return log.toString();
    }

    /** The car of which the invented log is: that of the demo, as its second revision describes it. */
    public static Build.Builder drifter() {
        return Build.forCar(CarClass.DRIFT)
                .seen(BuildField.ENGINE_CLASS, EngineClass.PETROL_TURBO)
                .set(BuildField.ENGINE_DISPLACEMENT, Stated.measured(2.998e-3))
                .set(BuildField.ENGINE_POWER, Stated.measured(330e3))
                .set(BuildField.ENGINE_SPEED, Stated.measured(6800 / 60.0))
                .seen(BuildField.FUEL, Fuel.E85)
                .set(BuildField.CORE_WIDTH, Stated.measured(0.6))
                .set(BuildField.CORE_HEIGHT, Stated.measured(0.4))
                .set(BuildField.CORE_DEPTH, Stated.measured(0.052))
                .set(BuildField.CORE_TILT, Stated.measured(Math.toRadians(20)))
                .seen(BuildField.FAN_MOUNTING, FanMounting.PUSHING)
                .set(BuildField.FAN_COUNT, Stated.measured(2))
                .set(BuildField.FAN_DIAMETER, Stated.advertised(0.3048))
                .set(BuildField.FAN_FLOW, Stated.advertised(1.18))
                .set(BuildField.FAN_CURRENT, Stated.measured(11))
                .set(BuildField.FAN_COVER, Stated.measured(0.55))
                .seen(BuildField.CONTROL_KIND, FanControlKind.RAMP)
                .set(BuildField.CONTROL_SET, Stated.measured(358.15))
                .set(BuildField.CONTROL_BAND, Stated.measured(15))
                .set(BuildField.COOLANT_GLYCOL, Stated.measured(0.3))
                .set(BuildField.CAP_PRESSURE, Stated.measured(1.3e5))
                .seen(BuildField.THERMOSTAT, ThermostatFitting.REMOVED)
                .seen(BuildField.THERMOSTAT_BYPASS, BypassState.OPEN)
                .seen(BuildField.GAUGE_SENSOR, SensorPlacement.HEAD)
                .seen(BuildField.AIR_EXIT, AirExit.HOOD_VENT)
                .set(BuildField.ALTERNATOR, Stated.measured(110));
    }

    /** The log of the demo's drift car, eighteen minutes. */
    public static String drift() throws IOException {
        return new ClassPathResource("demo/drift-log.csv").getContentAsString(StandardCharsets.UTF_8);
    }

    /** The same log with a column more, at each row the same. */
    static String with(String log, String heading, String cell) {
        String[] lines = log.split("\n");
        StringBuilder wider = new StringBuilder();
        boolean headed = false;
        for (String line : lines) {
            if (line.startsWith("#")) {
                wider.append(line).append('\n');
            } else {
                wider.append(line).append(',').append(headed ? cell : heading).append('\n');
                headed = true;
            }
        }
        return wider.toString();
    }
}
