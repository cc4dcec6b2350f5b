package headertank.calc.air;

import java.util.List;

/** Guessed typical fans by diameter, for a shop that knows no more than the size. */
public final class TypicalFans implements FanSource {

    private static final List<TypicalFan> FANS = List.of(
            new TypicalFan("electric 0.25 m", FanSpec.of(1, 0.38, 180, 0.25, 0.10), 8),
            new TypicalFan("electric 0.30 m", FanSpec.of(1, 0.60, 220, 0.30, 0.11), 13),
            new TypicalFan("electric 0.35 m", FanSpec.of(1, 0.70, 225, 0.35, 0.12), 16),
            new TypicalFan("electric 0.35 m, strong", FanSpec.of(1, 0.85, 260, 0.35, 0.12), 22),
            new TypicalFan("electric 0.40 m", FanSpec.of(1, 0.80, 230, 0.40, 0.14), 20),
            new TypicalFan("engine-driven 0.45 m at 2500 rev/min", FanSpec.of(1, 1.0, 200, 0.45, 0.15), 0));

    @Override
    public String id() {
        return "typical";
    }

    @Override
    public String version() {
        return "1";
    }

    @Override
    public String source() {
        return "guessed by diameter for this project: flow 15 %, shut-off pressure 20 % (one standard deviation)";
    }

    @Override
    public List<TypicalFan> fans() {
        return FANS;
    }
}
