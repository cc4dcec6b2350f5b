package headertank.calc.quantity;

/**
 * A value as somebody stated it, in its SI unit, with where it comes from and how far it may be off.
 *
 * @param si the value in the SI unit of its field
 * @param from where it comes from
 * @param spread how far it may be off, or {@code null} for the default that the field gives to this provenance
 */
public record Stated(double si, Provenance from, Spread spread) implements Entry {

    public Stated {
        if (Double.isNaN(si) || Double.isInfinite(si)) {
            throw new IllegalArgumentException("a stated value must be a finite number, is " + si);
        }
        if (from == null) {
            throw new IllegalArgumentException("a stated value needs its provenance");
        }
    }

    public static Stated measured(double si) {
        return new Stated(si, Provenance.MEASURED, null);
    }

    public static Stated datasheet(double si) {
        return new Stated(si, Provenance.DATASHEET, null);
    }

    public static Stated advertised(double si) {
        return new Stated(si, Provenance.ADVERTISED, null);
    }

    public static Stated guessed(double si) {
        return new Stated(si, Provenance.GUESSED, null);
    }

    /** @return the same value with this spread instead of the default of its provenance */
    public Stated within(Spread narrower) {
        return new Stated(si, from, narrower);
    }
}
