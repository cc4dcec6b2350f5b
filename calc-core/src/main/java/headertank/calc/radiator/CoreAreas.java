package headertank.calc.radiator;

import headertank.calc.choice.TankPlacement;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;

/**
 * Areas and diameters that follow from a {@link CoreGeometry} and the way its tubes run; plain geometry, derived.
 *
 * @param depthM depth of the core, T_d [m]
 * @param tubes what the coolant meets
 * @param air what the air meets
 */
public record CoreAreas(double depthM, Tubes tubes, Air air) {

    /**
     * The coolant's side.
     *
     * @param lengthM length of a tube, L [m]
     * @param perRow tubes in a row, N_t = (S - F_l)/T_p; only whole ones where their pitch is known [-]
     * @param innerWidthM w_i = w_t - 2 t_w [m]
     * @param innerHeightM h_i = D_m - 2 t_w [m]
     * @param hydraulicDiameterM D_hi = 4 w_i h_i/(2 (w_i + h_i)) [m]
     * @param areaM2 inner area of all tubes, A_in [m2]
     * @param flowAreaM2 cross section of all tubes together [m2]
     */
    public record Tubes(
            double lengthM,
            double perRow,
            double innerWidthM,
            double innerHeightM,
            double hydraulicDiameterM,
            double areaM2,
            double flowAreaM2) {}

    /**
     * The air's side, of N_b = N_t + 1 banks with N_f = L/F_p fins each.
     *
     * @param areaM2 whole area: fins and bare tube, A [m2]
     * @param finAreaM2 area of the fins, 2 F_l T_d N_f N_b [m2]
     * @param finFootAreaM2 area on which the fins stand on the tubes, 2 N_t N_r w_t L d/F_p [m2]
     * @param freeAreaM2 smallest free area, A_c = N_b N_f (F_p - d)(F_l - d) [m2]
     * @param freeShare free area over face, sigma_c = A_c/(L S), S the side of the face across the tubes [-]
     * @param hydraulicDiameterM D_h = 4 A_c T_d/A [m]
     */
    public record Air(
            double areaM2,
            double finAreaM2,
            double finFootAreaM2,
            double freeAreaM2,
            double freeShare,
            double hydraulicDiameterM) {}

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
        double feet = 2
                * allTubes
                * g.tubes().widthM()
                * length
                * g.fins().thicknessM()
                / g.fins().pitchM();
        return new CoreAreas(
                depth,
                new Tubes(
                        length,
                        tubes,
                        wi,
                        hi,
                        2 * wi * hi / (wi + hi),
                        2 * (wi + hi) * length * allTubes,
                        wi * hi * allTubes),
                new Air(area, finArea, feet, free, free / (length * stack), 4 * free * depth / area));
    }
}
