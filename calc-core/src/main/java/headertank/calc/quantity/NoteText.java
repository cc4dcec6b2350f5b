package headertank.calc.quantity;

/** What models say where they are used beyond their sources. */
public enum NoteText implements MessageCode {
    EFFICIENCY_LEAVES_NO_EXHAUST(0),
    EXHAUST_SHARE_UNUSUAL(0),
    WALL_HEAT_DISAGREES(0),
    SPEED_BEYOND_POWER(0),
    GLYCOL_BEYOND_TABLES(0),
    COLDER_THAN_GLYCOL_TABLES(0),
    HOTTER_THAN_GLYCOL_TABLES(2),
    WATER_BEYOND_TABLES(2),
    HEAD_FLOW_TOO_SLOW(0),
    LOUVRES_OF_ANOTHER_GEOMETRY(0),
    LOUVRE_AIR_BEYOND_MEASURED(0),
    PLAIN_FINS_NOT_LAMINAR(0),
    CORE_DEPTH_BEYOND_MEASURED(1),
    CORE_UNLIKE_ITS_CLASS(3);

    private final int arguments;

    NoteText(int arguments) {
        this.arguments = arguments;
    }

    @Override
    public String code() {
        return MessageCode.of("note", this);
    }

    @Override
    public int arguments() {
        return arguments;
    }
}
