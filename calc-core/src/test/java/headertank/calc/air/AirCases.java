package headertank.calc.air;

import headertank.calc.quantity.Physics;
import java.util.Random;

/** Air paths that several tests use. */
final class AirCases {

    static final CoreDropCurve DRIFT_CORE = new CoreDropCurve(17.408, 4.5514);
    static final CoreDropCurve ROAD_CORE = new CoreDropCurve(14.039, 2.4272);
    static final Fan DRIFT_FANS = Fan.of(FanSpec.of(2, 0.85, 260, 0.35, 0.12));
    static final Fan ROAD_FAN = Fan.of(FanSpec.of(1, 0.80, 230, 0.40, 0.14));
    static final double FULL = Fan.speedFactor(1, 13.5);

    private AirCases() {}

    static AirPathSpec drift(double cover, boolean flaps) {
        return new AirPathSpec(
                0.70 * 0.46, 0.17, 0.18, 0.80, 0, 0.8, 1.6, 0.90, Math.toRadians(35), cover, flaps, 0.08);
    }

    static AirPathSpec road() {
        return new AirPathSpec(0.65 * 0.40, 0.11, 0.13, 0.80, 0, 0.8, 1.6, 0.90, 0, 1, false, 0.08);
    }

    static AirConditions at(double speedMPerS) {
        return dry(speedMPerS, 0, Physics.STANDARD_PRESSURE_PA, Physics.kelvin(30), Physics.kelvin(70));
    }

    /** Dry air that enters the core at ambient temperature. */
    static AirConditions dry(double speedMPerS, double yawRad, double pressurePa, double ambientK, double airOutK) {
        return new AirConditions(speedMPerS, yawRad, pressurePa, ambientK, ambientK, airOutK, 1);
    }

    /** The flow at stated temperatures. */
    static AirFlow solve(AirPath path, AirConditions at, CoreDropCurve core, Fan fan, double fanSpeedFactor) {
        AirBalance balance = path.balance(core, fan);
        balance.around(at);
        balance.solve(at.airInK(), at.airOutK(), fanSpeedFactor);
        return balance.flow();
    }

    static AirPath path(AirPathSpec spec) {
        return new AirPath(spec, AirFactors.NOMINAL);
    }

    /** The same fans before the core. */
    static FanSpec pushing(FanSpec fan) {
        return new FanSpec(
                fan.count(),
                fan.freeFlowM3PerS(),
                fan.shutOffPa(),
                fan.diameterM(),
                fan.hubDiameterM(),
                fan.shape(),
                true,
                fan.windmillingLoss());
    }

    static FanSpec fan(Random r) {
        double d = 0.2 + 0.3 * r.nextDouble();
        return new FanSpec(
                1 + r.nextInt(3),
                0.2 + 1.2 * r.nextDouble(),
                60 + 400 * r.nextDouble(),
                d,
                d * (0.2 + 0.4 * r.nextDouble()),
                0.2 + 0.7 * r.nextDouble(),
                false,
                1 + 8 * r.nextDouble());
    }

    static AirPathSpec path(Random r) {
        double face = 0.1 + 0.5 * r.nextDouble();
        return new AirPathSpec(
                face,
                face * (0.2 + 0.8 * r.nextDouble()),
                face * (0.2 + 0.8 * r.nextDouble()),
                0.2 + 0.8 * r.nextDouble(),
                -0.4 + 0.6 * r.nextDouble(),
                0.1 + 3 * r.nextDouble(),
                0.1 + 3 * r.nextDouble(),
                0.4 + 0.6 * r.nextDouble(),
                0.8 * r.nextDouble(),
                r.nextInt(4) == 0 ? 1 : 0.3 + 0.69 * r.nextDouble(),
                r.nextBoolean(),
                0.3 * r.nextDouble());
    }

    static AirConditions conditions(Random r) {
        double ambient = 250 + 70 * r.nextDouble();
        double in = ambient + 30 * r.nextDouble();
        return new AirConditions(
                r.nextInt(8) == 0 ? 0 : 70 * r.nextDouble(),
                0.8 * r.nextDouble(),
                60e3 + 45e3 * r.nextDouble(),
                ambient,
                in,
                in + 60 * r.nextDouble(),
                0.98 + 0.02 * r.nextDouble());
    }

    static CoreDropCurve core(Random r) {
        return new CoreDropCurve(4 + 25 * r.nextDouble(), 0.5 + 8 * r.nextDouble());
    }
}
