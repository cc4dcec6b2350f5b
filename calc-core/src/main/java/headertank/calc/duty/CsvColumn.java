package headertank.calc.duty;

import headertank.calc.quantity.Message;
import headertank.calc.quantity.Range;

/** The columns of a duty as comma-separated text; the unit stands in the name. */
enum CsvColumn {
    POINT("point", DutyInputText.A_NAME.with(CsvText.word(CsvDutyReader.LONGEST_NAME))),
    LABEL("label", DutyInputText.TEXT.with()),
    DURATION("duration_s", Range.of(0.01, 86400)),
    ROAD_SPEED("road_speed_km_per_h", Range.of(0, 324)),
    SIDESLIP("sideslip_deg", Range.of(-90, 90)),
    AMBIENT_OFFSET("ambient_offset_K", Range.of(-40, 40)),
    DEMAND("demand", DutyInputText.ONE_OF.with(CsvText.word("idle, road, mix, engine_off"))),
    ENGINE_SPEED("engine_speed_share", Range.of(0, 1.2)),
    ACCESSORIES("accessories_W", Range.of(0, 50e3)),
    AIR_CONDITIONING("air_conditioning_W", Range.of(0, 20e3)),
    SLOPE("slope", Range.of(-0.5, 0.5)),
    MODES("modes", DutyInputText.MODES.with()),
    PUMP_RUN_ON("pump_run_on_share", Range.of(0, 1)),
    FANS_RUN_ON("fans_run_on", DutyInputText.ONE_OF.with(CsvText.word("yes, no"))),
    LOAD_SIGMA("load_sigma_share", Range.of(0, 1));

    final String key;
    final Range range;
    /** What is accepted. */
    final Message allowed;

    CsvColumn(String key, Range range) {
        this.key = key;
        this.range = range;
        this.allowed = allowed(range);
    }

    CsvColumn(String key, Message allowed) {
        this.key = key;
        this.range = null;
        this.allowed = allowed;
    }

    static Message allowed(Range range) {
        return DutyInputText.RANGE.with(CsvText.word(plain(range.min())), CsvText.word(plain(range.max())));
    }

    static CsvColumn of(String key) {
        for (CsvColumn c : values()) {
            if (c.key.equals(key)) {
                return c;
            }
        }
        return null;
    }

    /** @return the number without exponent or trailing zeros, to ten significant figures */
    static String plain(double value) {
        return value == 0
                ? "0"
                : new java.math.BigDecimal(value)
                        .round(new java.math.MathContext(10))
                        .stripTrailingZeros()
                        .toPlainString();
    }
}
