package headertank.calc.rating;

import static headertank.calc.published.Check.check;

import headertank.calc.Rater;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.choice.AirExit;
import headertank.calc.choice.CoolantBase;
import headertank.calc.choice.FanDrive;
import headertank.calc.duty.Demand;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.engine.HeatSplit;
import headertank.calc.oil.OilBalance;
import headertank.calc.published.Check;
import headertank.calc.published.PublishedTestBase;
import headertank.calc.quantity.Physics;
import headertank.calc.quantity.Stated;
import headertank.calc.result.Balance;
import headertank.calc.result.PointRating;
import java.util.List;

/**
 * Whole cars that an English maker tried on a track, on hills and on French roads: what it wrote down against what ours makes of such
 * cars. Sizes of core and engine are those of the reports; power, engine speed and what else is not in them is from memory or what
 * the class of car gives.
 */
public class OldCarsPublishedTest extends PublishedTestBase {

    private static final String PAPERS =
            "papers of an English car maker's experimental department, 1906 to 1960, published by a memorial foundation; report of ";
    private static final String CAR =
            "six cylinders of 4257 cm3, core 473 sq. in. and 58 mm; 93 kW at 4500 1/min from memory, louvred copper-brass, fan and inlet of"
                    + " the class, water";
    private static final String TWELVE =
            "twelve cylinders of 7.3 litres, no oil cooler; 123 kW at 3000 1/min from memory";
    private static final double HILL_M_PER_S = 13.4;
    private static final double HILL_SHARE = 0.32;

    private final Rater rater = Rater.standard();
    private final Build vented = six(93e3, 4.257e-3, 0.058, AirExit.HOOD_VENT).build();
    private final Build plain = six(93e3, 4.257e-3, 0.058, AirExit.UNDER_CAR).build();

    public OldCarsPublishedTest() {}

    @Override
    public String subject() {
        return "Measured cars of the thirties";
    }

    @Override
    public List<Check> checks() {
        return List.of(
                check("air at which the water boils, full throttle at full speed", CAR, "C")
                        .ours(() -> boilsAtC(vented, 40, 0.95))
                        .published(42)
                        .withinAbsolute(10, "nothing fitted; the hood was vented by shutters, ours by a whole opening")
                        .source(PAPERS + "5 May 1937"),
                check("the same with a hood without a vent", CAR, "C")
                        .ours(() -> boilsAtC(plain, 40, 0.95))
                        .published(42)
                        .withinAbsolute(10, "the other bound of how the hood was vented")
                        .source(PAPERS + "5 May 1937"),
                check("the same, 3669 cm3, core 52 mm with finer fins", "82 kW from memory, fins 1.5 mm guessed", "C")
                        .ours(() -> boilsAtC(
                                six(82e3, 3.669e-3, 0.052, AirExit.HOOD_VENT).build(), 40, 0.95))
                        .published(52)
                        .withinAbsolute(10, "nothing fitted; as above")
                        .source(PAPERS + "28 September 1936"),
                check("the same at low speed, full throttle at 20 miles an hour", CAR, "C")
                        .ours(() -> boilsAtC(plain, 8.94, 0.21))
                        .published(39.5)
                        .withinAbsolute(10, "2 to 3 K below that at full speed")
                        .source(PAPERS + "28 September 1936"),
                check("what a vent in the hood takes off, full throttle at 30 miles an hour", CAR, "K")
                        .ours(() ->
                                coolantC(plain, HILL_M_PER_S, HILL_SHARE) - coolantC(vented, HILL_M_PER_S, HILL_SHARE))
                        .published(4)
                        .withinAbsolute(2, "about 4 C, another car of the make")
                        .source(PAPERS + "8 October 1930"),
                check("the same at 45 miles an hour", CAR, "K")
                        .ours(() -> coolantC(plain, 20.1, 0.48) - coolantC(vented, 20.1, 0.48))
                        .published(7)
                        .withinAbsolute(3, "6 to 8 C, another car of the make")
                        .source(PAPERS + "8 October 1930"),
                check("what the fan takes off at 60 miles an hour", CAR, "K")
                        .ours(() -> coolantC(withoutFan(), 26.8, 0.64) - coolantC(vented, 26.8, 0.64))
                        .published(1)
                        .withinAbsolute(
                                3, "it only took one degree off, and nothing at full speed; whole degrees, another car")
                        .source(PAPERS + "29 June 1932"),
                check("what the water loses in the core, full throttle at 30 miles an hour", CAR, "K")
                        .ours(this::dropK)
                        .published(7.8)
                        .withinAbsolute(
                                2,
                                "7.3, 8.0 and 8.2 with three cores in another car; the class's pump was chosen with it in view")
                        .source(PAPERS + "2 July 1932"),
                check("oil at 60 miles an hour on the road", TWELVE + "; water at 95 C at most, air 23 C", "C")
                        .ours(() -> oilC(0.5, 0.35, 26.8, 92, 23))
                        .published(105)
                        .withinAbsolute(10, "mean of 224 miles, 112 at most; load guessed from speed and weight")
                        .source(PAPERS + "20 August 1937"),
                check("oil at full speed, overdrive", TWELVE + "; water 95 to 100 C", "C")
                        .ours(() -> oilC(0.72, 0.9, 40, 97.5, 18))
                        .published(126)
                        .withinAbsolute(18, "engine speed guessed; oils of that time rub more than ours")
                        .source(PAPERS + "25 May 1938"),
                check("oil at full speed, direct gear", TWELVE + "; water 95 to 100 C", "C")
                        .ours(() -> oilC(1, 1, 40, 97.5, 18))
                        .published(138)
                        .withinAbsolute(
                                18, "ours is cooler: one standard deviation of its way to the coolant is 7 K here")
                        .source(PAPERS + "25 May 1938"));
    }

    private static Build.Builder six(double powerW, double displacementM3, double depthM, AirExit exit) {
        double width = 0.46;
        return Build.forCar(CarClass.OLD_STREET)
                .set(BuildField.ENGINE_POWER, Stated.datasheet(powerW))
                .set(BuildField.ENGINE_DISPLACEMENT, Stated.datasheet(displacementM3))
                .set(BuildField.ENGINE_CYLINDERS, Stated.measured(6))
                .set(BuildField.ENGINE_SPEED, Stated.datasheet(4500 / 60.0))
                .set(BuildField.CORE_WIDTH, Stated.measured(width))
                .set(BuildField.CORE_HEIGHT, Stated.measured(0.3052 / width))
                .set(BuildField.CORE_DEPTH, Stated.measured(depthM))
                .set(BuildField.CORE_BLOCKED, Stated.measured(0))
                .seen(BuildField.COOLANT_BASE, CoolantBase.WATER)
                .seen(BuildField.THERMOSTAT, "REMOVED")
                .seen(BuildField.THERMOSTAT_BYPASS, "BLOCKED")
                .seen(BuildField.AIR_EXIT, exit)
                .set(BuildField.COOLANT_LIMIT, Stated.measured(Physics.kelvin(100)))
                .set(BuildField.AMBIENT, Stated.measured(Physics.kelvin(23)));
    }

    private static Build withoutFan() {
        return six(93e3, 4.257e-3, 0.058, AirExit.HOOD_VENT)
                .seen(BuildField.FAN_DRIVE, FanDrive.NONE)
                .build();
    }

    /** Full throttle at a road speed and an engine speed over rated speed. */
    private PointRating fullThrottle(Build build, double roadMPerS, double speedShare) {
        var engine = Plant.of(rater.resolve(build)).engine();
        double share = engine.fullLoadPowerW(speedShare * engine.spec().ratedSpeedPerS())
                / engine.spec().ratedPowerW();
        return rater.at(
                build,
                new OperatingPoint(
                        "full",
                        "Full throttle",
                        roadMPerS,
                        0,
                        0,
                        new Demand.Mix(List.of(new Demand.Mode(1, Math.min(1, share), speedShare)), speedShare),
                        0.1));
    }

    private double boilsAtC(Build build, double roadMPerS, double speedShare) {
        return Physics.celsius(fullThrottle(build, roadMPerS, speedShare)
                .figures()
                .orElseThrow()
                .limitingAmbientK());
    }

    private Balance.Steady steady(Build build, double roadMPerS, double speedShare) {
        return (Balance.Steady) fullThrottle(build, roadMPerS, speedShare).balance();
    }

    private double coolantC(Build build, double roadMPerS, double speedShare) {
        return Physics.celsius(steady(build, roadMPerS, speedShare).engineOutK());
    }

    private double dropK() {
        Balance.Steady s = steady(vented, HILL_M_PER_S, HILL_SHARE);
        return s.engineOutK() - s.coolant().radiatorOutK();
    }

    private double oilC(double speedShare, double loadShare, double roadMPerS, double coolantC, double airC) {
        Plant plant = Plant.of(rater.resolve(Build.forCar(CarClass.OLD_STREET)
                .set(BuildField.ENGINE_POWER, Stated.datasheet(123e3))
                .set(BuildField.ENGINE_DISPLACEMENT, Stated.datasheet(7.34e-3))
                .set(BuildField.ENGINE_CYLINDERS, Stated.measured(12))
                .set(BuildField.ENGINE_SPEED, Stated.datasheet(3000 / 60.0))
                .seen(BuildField.OIL_COOLER, "NONE")
                .build()));
        double speed = speedShare * 50;
        HeatSplit heat = plant.engine().at(loadShare * plant.engine().fullLoadPowerW(speed), speed);
        return Physics.celsius(OilBalance.temperatureK(
                plant.oil().at(speed, roadMPerS, 0), heat.oilW(), Physics.kelvin(coolantC), Physics.kelvin(airC)));
    }
}
