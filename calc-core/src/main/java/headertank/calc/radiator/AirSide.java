package headertank.calc.radiator;

import headertank.calc.quantity.Note;
import java.util.List;

/** Heat transfer and friction of the fins. */
interface AirSide {

    /** @return the length on which the Reynolds number is formed [m] */
    double reynoldsLengthM();

    /**
     * @param reynolds Reynolds number on {@link #reynoldsLengthM()} and the velocity in the smallest free area [-]
     * @param prandtl Prandtl number of the air [-]
     * @return Colburn factor j = St Pr^(2/3) [-]
     */
    double colburn(double reynolds, double prandtl);

    /**
     * @param reynolds as above [-]
     * @return Fanning friction factor [-]
     */
    double friction(double reynolds);

    /** @return what the source does not cover of this geometry */
    List<Note> geometryNotes();

    /** @return what the source does not cover of this Reynolds number */
    List<Note> flowNotes(double reynolds);

    /** @return one standard deviation of j, as a share [-] */
    double colburnSpread();

    /** @return one standard deviation of the friction factor, as a share [-] */
    double frictionSpread();

    /** @return where j comes from */
    String colburnSource();

    /** @return where the friction factor comes from */
    String frictionSource();
}
