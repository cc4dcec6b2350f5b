package headertank.app.log.read;

import headertank.app.log.file.Heading;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** Columns that tell where a car was. */
final class Positions {

    private static final Pattern NAMES = Pattern.compile(
            ".*(latitude|longitude|geohash|geo hash|breitengrad|laengengrad|geogr|coordinate|koordinate|easting|northing|hochwert"
                    + "|rechtswert|nmea|mgrs|utm|what3words|address|adresse|\\bstreet\\b|strasse|postcode|\\bplz\\b).*");

    /** Words that are a column of position when they stand with little else. */
    private static final Set<String> WORDS = Set.of(
            "lat", "lon", "lng", "long", "latitude", "longitude", "latlon", "latlng", "location", "ort", "standort");

    private static final Set<String> BESIDE =
            Set.of("gps", "gnss", "pos", "position", "x", "y", "deg", "car", "start", "end");

    private Positions() {}

    /** Whether a heading names a place. */
    static boolean isPosition(Heading heading) {
        String words = heading.words();
        if (NAMES.matcher(words).matches()) {
            return true;
        }
        Set<String> rest = new TreeSet<>(List.of(words.split(" ")));
        boolean named = rest.removeIf(WORDS::contains);
        boolean acceleration = heading.unit().matches("(?i)g|m/s.*|°/s.*");
        boolean placed = rest.remove("gps") || rest.remove("gnss");
        boolean byReceiver = placed
                && (rest.contains("x") || rest.contains("y") || rest.contains("pos") || rest.contains("position"));
        rest.removeAll(BESIDE);
        return !acceleration && (named && rest.size() <= 1 && !isAxis(rest) || byReceiver && rest.isEmpty());
    }

    /** {@code lat} and {@code long} are also directions of an acceleration or a slip. */
    private static boolean isAxis(Set<String> rest) {
        return rest.stream().anyMatch(w -> w.matches("acc.*|accel.*|g|force|slip|beschl.*|term|fuel|trim|rate"));
    }
}
