package headertank.calc.engine;

import headertank.calc.quantity.Note;
import java.util.List;

/**
 * Where the fuel's power goes. {@code fuelW = brakeW + coolantW + oilW + exhaustW + unburntW + miscW} to 1e-12 of the
 * larger of fuel and friction power.
 *
 * @param fuelW fuel flow times lower heating value [W]; 0 in overrun
 * @param brakeW power at the crankshaft and accessories [W]; negative in overrun: the car drives the engine
 * @param coolantW heat to the coolant [W]
 * @param oilW heat to the oil [W]
 * @param exhaustW heat and unused enthalpy in the exhaust [W]
 * @param unburntW heating value that leaves unburnt [W]
 * @param miscW radiation, accessories, the rest of the friction and the work of gas exchange [W]
 * @param frictionW friction power and that of gas exchange at full throttle, a part of coolant, oil and misc [W]
 * @param throttlingW further work of gas exchange against the manifold's vacuum, a part of misc [W]
 * @param releasedW heat released by combustion [W]
 * @param loadShare brake power over full-throttle power at this speed, at most 1 [-]
 * @param lambda air-fuel ratio over the stoichiometric one [-]; 0 when no fuel burns
 * @param airMassKgPerS air through the burning engine [kg/s]
 * @param chargeMassKgPerS air and fuel [kg/s]
 * @param notes what lies outside the usual bounds
 */
public record HeatSplit(
        double fuelW,
        double brakeW,
        double coolantW,
        double oilW,
        double exhaustW,
        double unburntW,
        double miscW,
        double frictionW,
        double throttlingW,
        double releasedW,
        double loadShare,
        double lambda,
        double airMassKgPerS,
        double chargeMassKgPerS,
        List<Note> notes) {

    public HeatSplit {
        notes = List.copyOf(notes);
    }

    /** @return sum of the six shares less the fuel power [W]; a residual, ideally 0 */
    public double residualW() {
        return brakeW + coolantW + oilW + exhaustW + unburntW + miscW - fuelW;
    }
}
