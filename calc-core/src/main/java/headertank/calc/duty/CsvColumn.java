package headertank.calc.duty;

import headertank.calc.quantity.Range;

/** The columns of a duty as comma-separated text; the unit stands in the name. */
enum CsvColumn {
    POINT("point", null, "a short name of letters, digits, - and _"),
    LABEL("label", null, "text"),
    DURATION("duration_s", Range.of(0.01, 86400), null),
    ROAD_SPEED("road_speed_km_per_h", Range.of(0, 324), null),
    SIDESLIP("sideslip_deg", Range.of(-90, 90), null),
    AMBIENT_OFFSET("ambient_offset_K", Range.of(-40, 40), null),
    DEMAND("demand", null, "idle, road, mix or engine_off"),
    ENGINE_SPEED("engine_speed_share", Range.of(0, 1.2), null),
    ACCESSORIES("accessories_W", Range.of(0, 50e3), null),
    AIR_CONDITIONING("air_conditioning_W", Range.of(0, 20e3), null),
    SLOPE("slope", Range.of(-0.5, 0.5), null),
    MODES("modes", null, "time_share:power_share:speed_share, several parted by spaces, time shares sum to 1"),
    PUMP_RUN_ON("pump_run_on_share", Range.of(0, 1), null),
    FANS_RUN_ON("fans_run_on", null, "yes or no"),
    LOAD_SIGMA("load_sigma_share", Range.of(0, 1), null);

    final String key;
    final Range range;
    private final String words;

    CsvColumn(String key, Range range, String words) {
        this.key = key;
        this.range = range;
        this.words = words;
    }

    /** @return what is accepted, in words */
    String allowed() {
        return range == null ? words : plain(range.min()) + " to " + plain(range.max());
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
