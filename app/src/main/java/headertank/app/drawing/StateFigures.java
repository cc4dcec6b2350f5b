package headertank.app.drawing;

import headertank.app.check.stored.PointResult;
import headertank.calc.result.CoolingCurves;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * The figures of one operating point of a stored check: those of its steady state, and those of its working by section and
 * symbol. Without a steady state they are NaN.
 */
final class StateFigures {

    private final PointResult point;

    StateFigures(PointResult point) {
        this.point = point;
    }

    boolean steady() {
        return point.steady().isPresent();
    }

    /** A line of the working of a part, named by its code [SI]; NaN when there is none. */
    double worked(String section, String symbol) {
        return point.working().stream()
                .filter(s -> s.title().code().equals("working-part." + section))
                .flatMap(s -> s.lines().stream())
                .filter(l -> l.symbol().equals(symbol))
                .mapToDouble(l -> l.value())
                .findFirst()
                .orElse(Double.NaN);
    }

    double outsideK() {
        return worked("what-the-point-asks", "T_a");
    }

    double roadSpeedMPerS() {
        return worked("what-the-point-asks", "V");
    }

    double engineOutK() {
        return of(PointResult.Steady::engineOutK);
    }

    double radiatorOutK() {
        return of(PointResult.Steady::radiatorOutK);
    }

    double radiatorM3PerS() {
        return of(PointResult.Steady::radiatorM3PerS);
    }

    double bypassM3PerS() {
        return worked("coolant-flow", "Q_b");
    }

    double gaugeK() {
        return of(PointResult.Steady::gaugeK);
    }

    double oilK() {
        return of(PointResult.Steady::oilK);
    }

    double fanA() {
        return of(PointResult.Steady::fanCurrentA);
    }

    double lift() {
        return worked("coolant", "s");
    }

    double boilingK() {
        return worked("boiling", "T_sat");
    }

    double airInK() {
        return worked("steady-balance", "T_in");
    }

    double airOutK() {
        return worked("steady-balance", "T_out");
    }

    double airKgPerS() {
        return worked("air-through-the-core", "m_a");
    }

    double airM3PerS() {
        return airKgPerS() / worked("air-through-the-core", "rho");
    }

    double radiatorW() {
        return worked("steady-balance", "Q_rad");
    }

    /** Heat that the radiator has to give off in the steady state [W]. */
    double askedW() {
        return worked("steady-balance", "Q_cool + Q_oc") - worked("steady-balance", "Q_s");
    }

    /** What the curves need; empty without a steady state. */
    Optional<CoolingCurves.State> state() {
        if (!steady()) {
            return Optional.empty();
        }
        return Optional.of(new CoolingCurves.State(
                roadSpeedMPerS(),
                worked("what-the-point-asks", "beta"),
                outsideK(),
                airInK(),
                airOutK(),
                worked("fans", "N/N_0"),
                engineOutK(),
                radiatorM3PerS()));
    }

    private double of(ToDoubleFunction<PointResult.Steady> figure) {
        return point.steady().map(figure::applyAsDouble).orElse(Double.NaN);
    }
}
