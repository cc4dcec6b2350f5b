package headertank.app.glossary;

import headertank.app.unit.Dimension;
import java.util.Locale;
import java.util.Optional;

/**
 * A word of the trade, or of this program, that pages use; its sentence is in the message files. The fields of a car are further
 * terms, and explain themselves there in the same way.
 */
enum Term {
    GO(null),
    CONDITIONS(null),
    NO_GO(null),
    DUTY(null),
    OPERATING_POINT(null),
    RUN(null),
    COOLANT_MARGIN(Dimension.TEMPERATURE_DIFFERENCE),
    OIL_MARGIN(Dimension.TEMPERATURE_DIFFERENCE),
    BOILING_MARGIN(Dimension.TEMPERATURE_DIFFERENCE),
    CHANCE(Dimension.FRACTION),
    RANGE(null),
    HOTTEST_DAY(Dimension.TEMPERATURE),
    LAT(Dimension.TEMPERATURE),
    ATB(Dimension.TEMPERATURE),
    LINEAR(null),
    SLOW_COOLANT(null),
    CURRENT_BALANCE(Dimension.CURRENT),
    WHAT_IF(null),
    SHARE(Dimension.TEMPERATURE_DIFFERENCE),
    UNDONE(Dimension.TEMPERATURE_DIFFERENCE),
    RISKY_CHOICE(null),
    MEASURED(null),
    DATASHEET(null),
    ADVERTISED(null),
    GUESSED(null),
    ASSUMED(null),
    CLASS_OF_CAR(null),
    SPEC(null),
    REVISION(null),
    CHECK(null),
    SIGNATURE(null),
    OUT_OF_DATE(null),
    CHECK_LIST(null),
    SEND_BACK(null),
    HOT_REPORT(null),
    JOB(null),
    CATALOGUE(null),
    RECALL(null),
    AUDIT_TRAIL(null);

    private final Dimension dimension;

    Term(Dimension dimension) {
        this.dimension = dimension;
    }

    /** Empty for what is not measured. */
    Optional<Dimension> dimension() {
        return Optional.ofNullable(dimension);
    }

    /** As it stands in an address behind the hash sign, and in the message files. */
    String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
