package headertank.calc.radiator;

import headertank.calc.choice.TankPlacement;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;

/**
 * Areas and diameters that follow from a {@link CoreGeometry} and the way its tubes run; plain geometry, derived.
 *
 * @param tubeLengthM length of a tube, L [m]
 * @param stackM side of the face across the tubes, S [m]
 * @param tubePitchM pitch of the tubes across the face, T_p = F_l + D_m [m]
 * @param depthM depth of the core, T_d [m]
 * @param tubesPerRow tubes in a row, N_t = (S - F_l)/T_p; only whole ones where their pitch is known [-]
 * @param finBanks banks of fins, N_b = N_t + 1 [-]
 * @param finsPerBank fins in a bank, N_f = L/F_p [-]
 * @param finAreaM2 area of the fins, 2 F_l T_d N_f N_b [m2]
 * @param airAreaM2 whole area on the air side: fins and bare tube, A [m2]
 * @param freeAreaM2 smallest free area for the air, A_c = N_b N_f (F_p - d)(F_l - d) [m2]
 * @param airHydraulicDiameterM D_h = 4 A_c T_d/A [m]
 * @param freeShare free area over face, sigma_c = A_c/(L S) [-]
 * @param tubeInnerWidthM w_i = w_t - 2 t_w [m]
 * @param tubeInnerHeightM h_i = D_m - 2 t_w [m]
 * @param tubeHydraulicDiameterM D_hi = 4 w_i h_i/(2 (w_i + h_i)) [m]
 * @param tubeAreaM2 inner area of all tubes, A_in [m2]
 * @param tubeFlowAreaM2 cross section of all tubes together [m2]
 * @param finFootAreaM2 area on which the fins stand on the tubes, 2 N_t N_r w_t L d/F_p [m2]
 */
public record CoreAreas(
        double tubeLengthM,
        double stackM,
        double tubePitchM,
        double depthM,
        double tubesPerRow,
        double finBanks,
        double finsPerBank,
        double finAreaM2,
        double airAreaM2,
        double freeAreaM2,
        double airHydraulicDiameterM,
        double freeShare,
        double tubeInnerWidthM,
        double tubeInnerHeightM,
        double tubeHydraulicDiameterM,
        double tubeAreaM2,
        double tubeFlowAreaM2,
        double finFootAreaM2) {

    /**
     * @param g the core
     * @param tanks where its tanks sit
     * @param wholeTubes whether the pitch of the tubes is that of this core, so that the last one has room or has not; of a
     *     pitch that only stands in, a fraction of a tube is left, else 10 mm of height would be worth nothing or a tube
     * @return its areas
     * @throws OutOfRangeException when not even two tubes find room
     */
    public static CoreAreas of(CoreGeometry g, TankPlacement tanks, boolean wholeTubes) {
        boolean across = tanks == TankPlacement.SIDES;
        double length = across ? g.face().widthM() : g.face().heightM();
        double stack = across ? g.face().heightM() : g.face().widthM();
        double tubePitch = g.fins().heightM() + g.tubes().heightM();
        double depth = g.depthM();
        double room = (stack - g.fins().heightM()) / tubePitch;
        // The small addend keeps a core that fits exactly from losing a tube to rounding.
        double tubes = wholeTubes ? Math.floor(room + 1e-9) : room;
        OutOfRangeException.require("tubesPerRow", tubes, Range.of(2, 1000));
        double banks = tubes + 1;
        double fins = length / g.fins().pitchM();
        double finArea = 2 * g.fins().heightM() * depth * fins * banks;
        double prime = 2
                * g.tubes().widthM()
                * g.tubes().rows()
                * length
                * (1 - g.fins().thicknessM() / g.fins().pitchM())
                * tubes;
        double area = finArea + prime;
        double free = banks
                * fins
                * (g.fins().pitchM() - g.fins().thicknessM())
                * (g.fins().heightM() - g.fins().thicknessM());
        double wi = g.tubes().widthM() - 2 * g.tubes().wallM();
        double hi = g.tubes().heightM() - 2 * g.tubes().wallM();
        double allTubes = tubes * g.tubes().rows();
        return new CoreAreas(
                length,
                stack,
                tubePitch,
                depth,
                tubes,
                banks,
                fins,
                finArea,
                area,
                free,
                4 * free * depth / area,
                free / (length * stack),
                wi,
                hi,
                2 * wi * hi / (wi + hi),
                2 * (wi + hi) * length * allTubes,
                wi * hi * allTubes,
                2
                        * allTubes
                        * g.tubes().widthM()
                        * length
                        * g.fins().thicknessM()
                        / g.fins().pitchM());
    }
}
