package headertank.calc.quantity;

/** What an input may be. */
public enum InputText implements MessageCode {
    /** From, to. */
    RANGE(2),
    /** A whole number from, to. */
    WHOLE_RANGE(2),
    /** A number rather than a choice. */
    NUMBER(0),
    /** One of the tokens in the argument. */
    ONE_OF(1),
    /** A diesel engine burns diesel. */
    DIESEL_NEEDED(0),
    /** An engine with spark plugs burns anything but diesel. */
    DIESEL_REFUSED(0);

    private final int arguments;

    InputText(int arguments) {
        this.arguments = arguments;
    }

    @Override
    public String code() {
        return MessageCode.of("input", this);
    }

    @Override
    public int arguments() {
        return arguments;
    }
}
