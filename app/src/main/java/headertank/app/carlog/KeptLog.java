package headertank.app.carlog;

import java.time.Instant;

/**
 * A log of a car as it is kept. It never changes.
 *
 * @param textBytes length of its text [bytes]
 * @param sha256 of its text, in hexadecimal digits
 * @param leftOut how many columns that tell where the car was were left out
 */
record KeptLog(
        long id,
        long carId,
        String name,
        LogReading reading,
        int textBytes,
        String sha256,
        long rows,
        long badRows,
        double lengthS,
        int leftOut,
        String author,
        Instant keptAt) {}
