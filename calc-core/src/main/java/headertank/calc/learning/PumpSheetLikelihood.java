package headertank.calc.learning;

import headertank.calc.coolant.CoolantPump;
import headertank.calc.evidence.PumpSheet;
import java.util.function.UnaryOperator;

/** The coolant pump on its maker's sheet or on a bench. */
record PumpSheetLikelihood(PumpSheet sheet) implements Likelihood {

    @Override
    public double[] residuals(Candidate car, double[] nuisance) {
        CoolantPump pump = CoolantPump.of(car.plant(UnaryOperator.identity()).pump());
        double sigma = sheet.sigmaShare() * sheet.highestPa();
        return sheet.points().stream()
                .mapToDouble(p -> (p.risePa() - pump.risePa(p.speedShare(), p.flowM3PerS())) / sigma)
                .toArray();
    }
}
