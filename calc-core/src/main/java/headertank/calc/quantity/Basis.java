package headertank.calc.quantity;

/** What a figure rests on that no publication stands behind. */
public enum Basis implements MessageCode {
    MODELLING_CHOICE,
    /** A rule of the trade without a source. */
    COMMON_PRACTICE;

    @Override
    public String code() {
        return MessageCode.of("basis", this);
    }

    @Override
    public int arguments() {
        return 0;
    }
}
