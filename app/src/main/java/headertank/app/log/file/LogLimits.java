package headertank.app.log.file;

/**
 * How large the pieces of a log may be. They bound the memory that a reader takes, whatever it is given.
 *
 * @param lineLength longest line [characters]
 * @param columns most cells of a line
 * @param cellLength longest cell [characters]
 * @param rows most lines
 */
public record LogLimits(int lineLength, int columns, int cellLength, long rows) {

    /** Modelling choice: a hundred times what ordinary logs need. */
    public static final LogLimits USUAL = new LogLimits(100_000, 1_000, 2_000, 50_000_000);
}
