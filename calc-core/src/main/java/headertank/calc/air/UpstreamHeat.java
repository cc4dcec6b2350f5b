package headertank.calc.air;

import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;
import java.util.List;

/**
 * A cooler in front of the radiator: condenser, charge cooler, oil cooler.
 *
 * @param heatW heat that it gives to the air [W], 0 to 1 MW
 * @param overlap share of that heat which the radiator's own air carries [-], 0 to 1
 */
public record UpstreamHeat(double heatW, double overlap) {

    public UpstreamHeat {
        OutOfRangeException.require("heatW", heatW, Range.of(0, 1e6));
        OutOfRangeException.require("overlap", overlap, Range.of(0, 1));
    }

    /** @return heat in the radiator's inlet air from all coolers in front of it [W] */
    public static double sumW(List<UpstreamHeat> coolers) {
        double sum = 0;
        for (UpstreamHeat c : coolers) {
            sum += c.heatW() * c.overlap();
        }
        return sum;
    }
}
