package headertank.calc.transients;

import static headertank.calc.published.Check.check;
import static headertank.calc.quantity.Physics.kelvin;

import headertank.calc.Rater;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.duty.Demand;
import headertank.calc.duty.Duty;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.duty.Schedule;
import headertank.calc.engine.EngineClass;
import headertank.calc.published.Check;
import headertank.calc.published.PublishedTestBase;
import headertank.calc.quantity.Stated;
import headertank.calc.rating.Plant;
import headertank.calc.result.RunResult;
import java.util.List;
import java.util.Optional;

/** The warm-up of a small car in town against one that its owner logged. */
public class WarmUpPublishedTest extends PublishedTestBase {

    /** 8 km in 13 minutes [m/s]. */
    private static final double SPEED_M_PER_S = 8000 / (13 * 60.0);

    public WarmUpPublishedTest() {}

    @Override
    public String subject() {
        return "Warm-up";
    }

    @Override
    public List<Check> checks() {
        return List.of(check(
                        "coolant at 80 C after a cold start",
                        "1.2 litre turbo petrol engine of 74 kW at 0 C, 8 km in town, settling between 80 and 84 C",
                        "s")
                .ours(WarmUpPublishedTest::secondsToWarm)
                .published(13 * 60)
                .within(
                        0.25,
                        "one car; its mass, coolant and gears are guessed, its heater and stops are not in the model; the"
                                + " masses of ours are guesses of 25 to 30 %")
                .source("How long does it take to warm an engine up?, 16 February 2013, pmitev.blogspot.com, a driver's"
                        + " log of the diagnosis port"));
    }

    private static double secondsToWarm() {
        Build small = Build.forCar(CarClass.MODERN_STREET)
                .seen(BuildField.ENGINE_CLASS, EngineClass.PETROL_TURBO)
                .set(BuildField.ENGINE_POWER, Stated.measured(74e3))
                .set(BuildField.ENGINE_DISPLACEMENT, Stated.measured(1.15e-3))
                .set(BuildField.CAR_MASS, Stated.measured(1200))
                .set(BuildField.COOLANT_VOLUME, Stated.measured(5.5e-3))
                .set(BuildField.THERMOSTAT_OPENING, Stated.measured(kelvin(83)))
                .set(BuildField.AMBIENT, Stated.measured(kelvin(0)))
                .build();
        OperatingPoint town =
                new OperatingPoint("town", "Town", SPEED_M_PER_S, 0, 0, new Demand.Road(0, 1500, 0.33), 0);
        Duty duty = new Duty(
                "warm-up",
                "Warm-up",
                List.of(town),
                Optional.of(new Schedule(kelvin(0), List.of(new Schedule.Phase("town", 1800)))),
                "test");
        Plant plant = Plant.of(Rater.standard().resolve(small));
        return RunSolver.run(plant, duty, RunSettings.STANDARD.at(1)).trace().stream()
                .filter(s -> s.coolantK() >= kelvin(80))
                .mapToDouble(RunResult.Sample::timeS)
                .findFirst()
                .orElse(Double.NaN);
    }
}
