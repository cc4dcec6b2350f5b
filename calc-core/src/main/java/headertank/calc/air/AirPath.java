package headertank.calc.air;

import headertank.calc.quantity.WorkedQuantity;
import headertank.calc.quantity.WorkingLine;
import java.util.List;
import org.hipparchus.util.FastMath;

/**
 * Air flow through a radiator, from one pressure balance.
 *
 * <p>With q the flow at core-inlet density rho, rho_a ambient density and q_o the flow at core-outlet density rho_o:
 *
 * <pre>
 * rho_a/2 V^2 (Cp_in cos^2 beta - Cp_ex) - rho/2 K_in (q/(sealing A_in))^2 - rho/2 K_t (q/A_f)^2
 *     - rho_o/2 K_ex (q_o/A_ex)^2 = D
 * under the shroud:  dp_core(v_1) - dp_fan = D        bare face:  dp_core(v_2) = D
 * </pre>
 *
 * The bare face flows backwards when D is below 0, unless it has flaps. D rises with the shrouded flow, the bare flow rises
 * with D, and the left side falls with both: there is one root. It is found on the shrouded flow, with the bare flow in
 * closed form. Losses of flow in the wrong direction keep their size and change their sign, so that every combination of
 * speed, fans and pressure coefficients has an answer; a car at rest with its fans off has no flow.
 *
 * <p>Derived from one-dimensional loss coefficients; the model takes air under the shroud and beside it as equally hot.
 */
public final class AirPath {

    private static final double FULL_SIDESLIP_RAD = Math.toRadians(25);

    private final AirPathSpec spec;
    private final AirFactors factors;
    private final double inletTerm;
    private final double tiltTerm;
    private final double exitTerm;

    /**
     * @param spec the air path
     * @param factors factors on what is uncertain
     */
    public AirPath(AirPathSpec spec, AirFactors factors) {
        this.spec = spec;
        this.factors = factors;
        double k = 0.5 * factors.lossCoefficients();
        double sealed = spec.sealing() * spec.inletAreaM2();
        double sine = FastMath.sin(spec.tiltRad());
        this.inletTerm = k * spec.inletLoss() / (sealed * sealed);
        this.tiltTerm = k * sine * sine / (spec.faceAreaM2() * spec.faceAreaM2());
        this.exitTerm = k * spec.exitLoss() / (spec.exitAreaM2() * spec.exitAreaM2());
    }

    /** @return the specification that this path was made for */
    public AirPathSpec spec() {
        return spec;
    }

    /**
     * @param core the core's pressure drop
     * @param fan the fans, or {@code null} for none
     * @return the balance of this path with them, to be solved many times
     */
    public AirBalance balance(CoreDropCurve core, Fan fan) {
        return new AirBalance(this, core, fan);
    }

    /** cos^2 of the sideslip angle; the factor on it takes hold up to 25 degrees, so that straight ahead nothing is unsure. */
    private static double ramShare(double yawRad, double sideslip) {
        double cosine = FastMath.cos(yawRad);
        double hold = Math.min(1, Math.abs(yawRad) / FULL_SIDESLIP_RAD);
        return Math.max(0, Math.min(1, (1 + (sideslip - 1) * hold) * cosine * cosine));
    }

    /**
     * @param at the conditions of a solved flow
     * @param flow the solved flow
     * @return how it came about, line by line
     */
    public List<WorkingLine> working(AirConditions at, AirFlow flow) {
        double cold = at.densityKgPerM3(at.airInK());
        double hot = at.densityKgPerM3(at.airOutK());
        double q = flow.shroudedM3PerS() + flow.bareM3PerS();
        String derived = "derived, one-dimensional losses";
        String gas = "ideal gas, R = 287.05 J/kgK";
        return List.of(
                new WorkingLine(WorkedQuantity.DENSITY_BEFORE_CORE, "rho", "kg/m3", cold, gas),
                new WorkingLine(WorkedQuantity.DENSITY_BEHIND_CORE, "rho_o", "kg/m3", hot, gas),
                new WorkingLine(WorkedQuantity.RAM_LESS_EXIT, "p_ram", "Pa", ram(at), derived),
                new WorkingLine(WorkedQuantity.INLET_LOSS, "p_in", "Pa", inletTerm * cold * q * Math.abs(q), derived),
                new WorkingLine(WorkedQuantity.TILT_LOSS, "p_tilt", "Pa", tiltTerm * cold * q * Math.abs(q), derived),
                new WorkingLine(
                        WorkedQuantity.EXIT_LOSS,
                        "p_ex",
                        "Pa",
                        exitTerm * cold * cold / hot * q * Math.abs(q),
                        derived),
                new WorkingLine(
                        WorkedQuantity.FAN_PRESSURE_RISE,
                        "p_fan",
                        "Pa",
                        flow.fanPressurePa(),
                        "fan laws; modelling choice"),
                new WorkingLine(WorkedQuantity.FLOW_OF_ONE_FAN, "q_fan", "m3/s", flow.perFanM3PerS(), derived),
                new WorkingLine(WorkedQuantity.CORE_AND_FAN_PRESSURE, "D", "Pa", flow.pressureAcrossPa(), derived),
                new WorkingLine(WorkedQuantity.FLOW_UNDER_THE_SHROUD, "q_1", "m3/s", flow.shroudedM3PerS(), derived),
                new WorkingLine(WorkedQuantity.FLOW_BESIDE_THE_SHROUD, "q_2", "m3/s", flow.bareM3PerS(), derived),
                new WorkingLine(WorkedQuantity.FACE_VELOCITY, "v_f", "m/s", flow.faceVelocityMPerS(), derived),
                new WorkingLine(WorkedQuantity.AIR_MASS_FLOW, "m_a", "kg/s", flow.massKgPerS(), derived),
                new WorkingLine(
                        WorkedQuantity.AIR_MASS_FLOW_BACKWARDS, "m_back", "kg/s", flow.backflowKgPerS(), derived),
                new WorkingLine(
                        WorkedQuantity.RECIRCULATED_SHARE, "r", "-", flow.recirculationShare(), "modelling choice"),
                new WorkingLine(WorkedQuantity.BALANCE_RESIDUAL, "dp", "Pa", flow.residualPa(), derived));
    }

    /** @return ram pressure at the inlet less pressure at the exit [Pa] */
    double ram(AirConditions at) {
        double inlet = spec.inletPressureCoefficient() * ramShare(at.yawRad(), factors.sideslip());
        return 0.5
                * at.densityKgPerM3(at.ambientK())
                * at.speedMPerS()
                * at.speedMPerS()
                * factors.ramPressure()
                * (inlet - spec.exitPressureCoefficient());
    }

    /** @return loss of inlet, tilt and exit per square of the flow at core-inlet density [Pa s2/m6] */
    double lossTerm(double cold, double hot) {
        return (inletTerm + tiltTerm) * cold + exitTerm * cold * cold / hot;
    }
}
