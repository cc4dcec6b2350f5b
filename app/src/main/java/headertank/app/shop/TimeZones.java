package headertank.app.shop;

import java.time.ZoneId;
import java.util.List;
import java.util.stream.Stream;

/** Time zones that a shop can be in: places of the IANA time zone database, and UTC. */
public final class TimeZones {

    /** What holds until somebody chooses. */
    public static final String USUAL = "UTC";

    private TimeZones() {}

    /** Names to choose from: UTC, then places by continent. Old names without a place and fixed offsets are left out. */
    public static List<String> names() {
        return Stream.concat(
                        Stream.of(USUAL),
                        ZoneId.getAvailableZoneIds().stream()
                                .filter(id -> id.contains("/") && !id.startsWith("Etc/") && !id.startsWith("SystemV/"))
                                .sorted())
                .toList();
    }

    /** Whether a shop can be in it. */
    public static boolean known(String name) {
        return names().contains(name);
    }
}
