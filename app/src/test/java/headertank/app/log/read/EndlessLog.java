package headertank.app.log.read;

import headertank.app.log.file.LogSource;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** A log of any number of rows that lies nowhere: twelve columns at 10 Hz, made as it is read. */
final class EndlessLog {

    private static final String HEADINGS =
            "Time [s],Coolant [°C],Engine speed [rpm],Road speed [km/h],Manifold pressure [kPa],"
                    + "Throttle [%],Intake air [°C],Oil temp [°C],Battery voltage [V],Fan duty [%],Lambda,Gear\n";

    private EndlessLog() {}

    static LogSource of(long rows) {
        return () -> new Bytes(rows);
    }

    private static final class Bytes extends InputStream {

        private final long rows;
        private final byte[] line = new byte[512];
        private int at;
        private int end;
        private long row = -1;

        Bytes(long rows) {
            this.rows = rows;
        }

        @Override
        public int read() {
            byte[] one = new byte[1];
            return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
        }

        @Override
        public int read(byte[] to, int offset, int most) {
            int n = 0;
            while (n < most) {
                if (at == end && !next()) {
                    break;
                }
                int k = Math.min(most - n, end - at);
                System.arraycopy(line, at, to, offset + n, k);
                at += k;
                n += k;
            }
            return n == 0 ? -1 : n;
        }

        private boolean next() {
            at = 0;
            end = 0;
            if (row >= rows) {
                return false;
            }
            if (row < 0) {
                byte[] head = HEADINGS.getBytes(StandardCharsets.UTF_8);
                System.arraycopy(head, 0, line, 0, head.length);
                end = head.length;
            } else {
                tenths(row, ',');
                tenths(700 + row / 50 % 300, ',');
                tenths(10 * (900 + row * 7 % 6000), ',');
                tenths(row % 1800, ',');
                tenths(300 + row * 13 % 700, ',');
                tenths(row * 3 % 1000, ',');
                tenths(250 + row / 100 % 200, ',');
                tenths(800 + row / 60 % 400, ',');
                tenths(135 + row % 10, ',');
                tenths(row / 200 % 2 * 1000, ',');
                tenths(9 + row % 3, ',');
                tenths(10 * (1 + row / 50 % 5), '\n');
            }
            row++;
            return true;
        }

        private void tenths(long value, char behind) {
            long whole = value / 10;
            int digits = 1;
            for (long v = whole; v >= 10; v /= 10) {
                digits++;
            }
            for (int i = end + digits - 1; i >= end; i--) {
                line[i] = (byte) ('0' + whole % 10);
                whole /= 10;
            }
            end += digits;
            line[end++] = '.';
            line[end++] = (byte) ('0' + value % 10);
            line[end++] = (byte) behind;
        }
    }
}
