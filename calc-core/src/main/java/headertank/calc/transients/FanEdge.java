package headertank.calc.transients;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;

/** Stops the integration where the fan sensor's reading passes an edge of the control in one direction. */
final class FanEdge implements ODEEventDetector, ODEEventHandler {

    private static final double CHECK_S = 1;
    private static final double WITHIN_S = 1e-6;
    private static final int MOST_TURNS = 100;

    private final int sensor;
    private final double edgeK;
    private final boolean up;
    private boolean hit;
    private double errorK;

    FanEdge(int sensor, double edgeK, boolean up) {
        this.sensor = sensor;
        this.edgeK = edgeK;
        this.up = up;
    }

    boolean hit() {
        return hit;
    }

    boolean up() {
        return up;
    }

    double errorK() {
        return errorK;
    }

    @Override
    public double g(ODEStateAndDerivative state) {
        return state.getPrimaryState()[sensor] - edgeK;
    }

    @Override
    public Action eventOccurred(ODEStateAndDerivative state, ODEEventDetector detector, boolean increasing) {
        if (increasing != up) {
            return Action.CONTINUE;
        }
        hit = true;
        errorK = Math.abs(g(state));
        return Action.STOP;
    }

    @Override
    public AdaptableInterval getMaxCheckInterval() {
        return AdaptableInterval.of(CHECK_S);
    }

    @Override
    public int getMaxIterationCount() {
        return MOST_TURNS;
    }

    @Override
    public BracketedUnivariateSolver<UnivariateFunction> getSolver() {
        return new BracketingNthOrderBrentSolver(0, WITHIN_S, 0, 5);
    }

    @Override
    public ODEEventHandler getHandler() {
        return this;
    }
}
