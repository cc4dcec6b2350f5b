package headertank.calc.learning;

import headertank.calc.choice.CoolantBase;
import headertank.calc.evidence.CoreSheet;
import headertank.calc.fluid.Coolant;
import headertank.calc.fluid.GlycolKind;
import headertank.calc.quantity.Physics;
import headertank.calc.radiator.Radiator;
import java.util.function.UnaryOperator;
import org.hipparchus.util.FastMath;

/** The heat of a core on its maker's sheet or on a bench. */
final class SheetLikelihood implements Likelihood {

    private final CoreSheet sheet;
    private final Coolant coolant;

    SheetLikelihood(CoreSheet sheet) {
        this.sheet = sheet;
        this.coolant = sheet.base() == CoolantBase.WATER
                ? Coolant.of(GlycolKind.NONE, 0)
                : Coolant.ofVolumeFraction(
                        sheet.base() == CoolantBase.PROPYLENE_GLYCOL ? GlycolKind.PROPYLENE : GlycolKind.ETHYLENE,
                        sheet.glycolShare());
    }

    @Override
    public double[] residuals(Candidate car, double[] nuisance) {
        Radiator core = car.plant(UnaryOperator.identity()).radiator();
        double[] residuals = new double[sheet.points().size()];
        for (int i = 0; i < residuals.length; i++) {
            CoreSheet.Point p = sheet.points().get(i);
            double heat = core.heat(
                            p.airKgPerS(),
                            p.airInK(),
                            Physics.STANDARD_PRESSURE_PA,
                            p.coolantM3PerS(),
                            coolant,
                            p.coolantInK())
                    .heatW();
            residuals[i] = FastMath.log(p.heatW() / heat) / sheet.sigmaShare();
        }
        return residuals;
    }
}
