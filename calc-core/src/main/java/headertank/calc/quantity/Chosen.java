package headertank.calc.quantity;

/**
 * One of a field's options, as somebody stated it.
 *
 * @param token the option's token, e.g. {@code COPPER_BRASS}
 * @param from where it comes from
 */
public record Chosen(String token, Provenance from) implements Entry {

    public Chosen {
        if (token == null || token.isBlank()) {
            throw new IllegalArgumentException("a choice needs a token");
        }
        if (from == null) {
            throw new IllegalArgumentException("a choice needs its provenance");
        }
    }

    /** @return whether this is the option */
    public boolean is(Enum<?> option) {
        return token.equals(option.name());
    }
}
