package headertank.app.unit;

import java.util.ArrayList;
import java.util.List;

/**
 * One way to write a quantity: SI value = number × factor + offset.
 *
 * @param symbol how it is shown, {@code m³/s}
 * @param spellings how people type it, already in the plain form of {@link UnitText#plain}
 * @param factor SI units per unit, exact where the definition is exact
 * @param offset added after the factor; only temperatures have one [K]
 * @param decimals digits after the point that make sense when it is shown
 */
record Unit(String symbol, List<String> spellings, double factor, double offset, int decimals) {

    Unit {
        spellings = List.copyOf(spellings);
    }

    static Unit of(String symbol, double factor, int decimals, String... moreSpellings) {
        return withOffset(symbol, factor, 0.0, decimals, moreSpellings);
    }

    static Unit withOffset(String symbol, double factor, double offset, int decimals, String... moreSpellings) {
        var all = new ArrayList<String>();
        all.add(UnitText.plain(symbol));
        for (String s : moreSpellings) {
            all.add(UnitText.plain(s));
        }
        return new Unit(symbol, all, factor, offset, decimals);
    }

    double toSi(double number) {
        return number * factor + offset;
    }

    double fromSi(double si) {
        return (si - offset) / factor;
    }
}
