package headertank.app.log.read;

import static headertank.app.log.read.LogQuantity.AMBIENT;
import static headertank.app.log.read.LogQuantity.BAROMETER;
import static headertank.app.log.read.LogQuantity.BOOST;
import static headertank.app.log.read.LogQuantity.COOLANT;
import static headertank.app.log.read.LogQuantity.ENGINE_SPEED;
import static headertank.app.log.read.LogQuantity.FAN;
import static headertank.app.log.read.LogQuantity.INTAKE_AIR;
import static headertank.app.log.read.LogQuantity.LOAD;
import static headertank.app.log.read.LogQuantity.MANIFOLD_PRESSURE;
import static headertank.app.log.read.LogQuantity.OIL;
import static headertank.app.log.read.LogQuantity.PEDAL;
import static headertank.app.log.read.LogQuantity.ROAD_SPEED;
import static headertank.app.log.read.LogQuantity.THROTTLE;
import static headertank.app.log.read.LogQuantity.VOLTAGE;

import headertank.app.log.file.LogRefused.Reason;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;
import java.util.function.IntToDoubleFunction;
import java.util.zip.GZIPOutputStream;

/**
 * Files as loggers and engine controllers write them, good and broken. Most hold the same forty rows, half a second apart:
 * coolant from 70 °C up by half a degree, engine from 900 rpm up by 25, road speed up by 2 km/h.
 */
final class LogCorpus {

    static final int ROWS = 40;
    private static final double RPM = Math.PI / 30;

    private LogCorpus() {}

    static double coolantC(int i) {
        return 70 + 0.5 * i;
    }

    static double coolantK(int i) {
        return coolantC(i) + 273.15;
    }

    static double rpm(int i) {
        return 900 + 25 * i;
    }

    static double radPerS(int i) {
        return rpm(i) * RPM;
    }

    static double kmh(int i) {
        return 2 * i;
    }

    static double mPerS(int i) {
        return kmh(i) / 3.6;
    }

    static String number(double v) {
        return v == Math.rint(v) && Math.abs(v) < 1e15 ? Long.toString((long) v) : Double.toString(v);
    }

    /** Forty rows, cells parted by a separator. */
    static String rows(String separator, IntFunction<List<String>> cells) {
        return rows(separator, 0, ROWS, cells);
    }

    static String rows(String separator, int from, int to, IntFunction<List<String>> cells) {
        StringBuilder text = new StringBuilder();
        for (int i = from; i < to; i++) {
            text.append(String.join(separator, cells.apply(i))).append('\n');
        }
        return text.toString();
    }

    static List<String> usual(int i) {
        return List.of(number(0.5 * i), number(coolantC(i)), number(rpm(i)), number(kmh(i)));
    }

    private static List<String> usualWithComma(int i) {
        return usual(i).stream().map(c -> c.replace('.', ',')).toList();
    }

    private static List<String> withTime(String time, int i) {
        List<String> cells = new ArrayList<>(usual(i));
        cells.set(0, time);
        return cells;
    }

    static final String HEADINGS = "Time [s],Coolant [°C],Engine speed [rpm],Road speed [km/h]";

    static String usualText() {
        return HEADINGS + "\n" + rows(",", LogCorpus::usual);
    }

    private static LogCase usualCase(String name, String text) {
        return usual(LogCase.of(name, text));
    }

    private static LogCase usual(LogCase c) {
        return c.column(COOLANT, "|°C", LogCorpus::coolantK)
                .column(ENGINE_SPEED, "|rpm", LogCorpus::radPerS)
                .column(ROAD_SPEED, "|km/h", LogCorpus::mPerS);
    }

    /** One more column beside the usual ones. */
    private static LogCase beside(
            String name, String heading, IntFunction<String> cell, LogQuantity q, String unit, IntToDoubleFunction si) {
        String text = HEADINGS + "," + heading + "\n"
                + rows(",", i -> {
                    List<String> cells = new ArrayList<>(usual(i));
                    cells.add(cell.apply(i));
                    return cells;
                });
        return usualCase(name, text).column(q, "|" + unit, si);
    }

    static List<LogCase> all() {
        List<LogCase> all = new ArrayList<>();
        separators(all);
        headings(all);
        encodings(all);
        times(all);
        units(all);
        rates(all);
        broken(all);
        orders(all);
        refused(all);
        return all;
    }

    private static void separators(List<LogCase> all) {
        all.add(usualCase("commas", usualText()));
        all.add(usualCase(
                "semicolons and decimal commas",
                HEADINGS.replace(',', ';') + "\n" + rows(";", LogCorpus::usualWithComma)));
        all.add(usualCase("tabs", HEADINGS.replace(',', '\t') + "\n" + rows("\t", LogCorpus::usual)));
        all.add(usualCase(
                "tabs and decimal commas", HEADINGS.replace(',', '\t') + "\n" + rows("\t", LogCorpus::usualWithComma)));
        all.add(usualCase("bars", HEADINGS.replace(',', '|') + "\n" + rows("|", LogCorpus::usual)));
        all.add(usualCase("single spaces", "t_s coolant_C engine_rpm speed_kmh\n" + rows(" ", LogCorpus::usual)));
        all.add(usualCase(
                "columns lined up by spaces",
                "   t_s   coolant_C  engine_rpm   speed_kmh\n"
                        + rows("     ", LogCorpus::usual).replaceAll("(?m)^", "  ")));
        all.add(usualCase("blanks behind commas", HEADINGS + "\n" + rows(", ", LogCorpus::usual)));
        all.add(usualCase(
                "a comma at the end of each row",
                HEADINGS + "\n" + rows(",", LogCorpus::usual).replace("\n", ",\n")));
        all.add(usualCase("a comma at the end of headings and rows", usualText().replace("\n", ",\n")));
        all.add(usualCase(
                "everything quoted",
                ("\"" + HEADINGS.replace(",", "\",\"") + "\"\n")
                        + rows(
                                ",",
                                i -> usual(i).stream().map(c -> "\"" + c + "\"").toList())));
        all.add(usualCase(
                "quoted decimal commas between commas",
                HEADINGS + "\n"
                        + rows(",", i -> usualWithComma(i).stream()
                                .map(c -> c.contains(",") ? "\"" + c + "\"" : c)
                                .toList())));
        all.add(usualCase(
                "a separator inside a quoted heading",
                "Time [s],Coolant [°C],Engine speed [rpm],\"Speed, by satellite [km/h]\"\n"
                        + rows(",", LogCorpus::usual)));
        all.add(usualCase("carriage returns and line feeds", usualText().replace("\n", "\r\n")));
        all.add(usualCase("carriage returns alone", usualText().replace('\n', '\r')));
        all.add(usualCase("no line end at the end", usualText().strip()));
        all.add(usualCase("blank lines between rows", usualText().replace("\n", "\n\n")));
        all.add(usualCase("rows of commas alone", usualText().replace("\n5,", "\n,,,\n5,")));
        all.add(usualCase("a line that names the separator", "sep=,\n" + usualText()));
        all.add(beside(
                "thousands set apart",
                "Distance,Intake air [°C]",
                i -> "\"1,0" + (10 + i) + ".25\"," + (20 + i / 4),
                INTAKE_AIR,
                "°C",
                i -> 273.15 + 20 + i / 4));
    }

    private static void headings(List<LogCase> all) {
        all.add(usualCase("bare names, units nowhere", "time,coolant,rpm,speed\n" + rows(",", LogCorpus::usual)));
        all.add(usualCase(
                "units in a second row", "Time,ECT,RPM,VSS\ns,°C,1/min,km/h\n" + rows(",", LogCorpus::usual)));
        all.add(usualCase(
                "units in brackets in a second row",
                "Time;Water temp;Engine speed;Ground speed\n[s];[degC];[rpm];[kph]\n" + rows(";", LogCorpus::usual)));
        all.add(usualCase(
                "a row of units with a blank line below",
                "Time,Coolant,RPM,Speed\ns,C,rpm,km/h\n\n" + rows(",", LogCorpus::usual)));
        all.add(usualCase(
                "German names",
                "Zeit;Kühlmitteltemperatur;Motordrehzahl;Fahrgeschwindigkeit\n"
                        + rows(";", LogCorpus::usualWithComma)));
        all.add(usualCase(
                "names and units with slashes",
                "t/s;T_Kuehl/°C;n_Mot/1/min;v_Fzg/km/h\n" + rows(";", LogCorpus::usualWithComma)));
        all.add(usualCase(
                "names with underscores and units",
                "time_s,coolant_C,engine_speed_1_per_min,road_speed_km_per_h\n" + rows(",", LogCorpus::usual)));
        all.add(usualCase(
                "names in camel case",
                "TimeStamp,CoolantTemp,EngineRPM,VehicleSpeedKmh\n" + rows(",", LogCorpus::usual)));
        all.add(usualCase(
                "misspelt names and empty units",
                "ENGINE_RUN_TINE (),COOLANT_TEMPERATRUE (),ENGINE_RMP (),VEHICEL_SPEED ()\n"
                        + rows(",", LogCorpus::usual)));
        all.add(usualCase(
                "lines before the headings",
                "Logger 7 of an invented maker\nDriver;Jo Example\nDate;2026-05-01\n\nSession;3;wet\n"
                        + HEADINGS.replace(',', ';') + "\n" + rows(";", LogCorpus::usual)));
        all.add(usualCase(
                        "comments before, between and behind",
                        "# a file, with commas, in its comment, twice\n# car: none\n"
                                + usualText().replace("\n5,", "\n# a note, here\n5,") + "# end\n")
                .comments(2));
        all.add(usualCase("headings in a comment", "#" + usualText()));
        all.add(usualCase(
                "a heading on two lines",
                "\"Time\n[s]\",\"Coolant\n[°C]\",\"Engine speed\n[rpm]\",\"Road speed\n[km/h]\"\n"
                        + rows(",", LogCorpus::usual)));
        all.add(usualCase("headings again amid the rows", usualText().replace("\n5,", "\n" + HEADINGS + "\n5,")));
        all.add(LogCase.of("no headings", rows(",", LogCorpus::usual))
                .no(COOLANT)
                .no(ENGINE_SPEED));
        all.add(usualCase(
                        "two columns of one name",
                        "Time [s],Coolant [°C],Coolant [°C],Engine speed [rpm],Road speed [km/h]\n"
                                + rows(
                                        ",",
                                        i -> List.of(
                                                number(0.5 * i),
                                                number(coolantC(i)),
                                                "20",
                                                number(rpm(i)),
                                                number(kmh(i)))))
                .column(COOLANT, "Coolant [°C]|°C", LogCorpus::coolantK));
        all.add(usualCase(
                "similar columns",
                "Time [s],Coolant pressure [bar],Coolant fan speed [rpm],Target coolant temp [°C],Wheel speed sensor voltage"
                        + " [V],Coolant temp [°C],Fuel pump rpm,Engine RPM,Speed limit [km/h],Vehicle speed [km/h]\n"
                        + rows(
                                ",",
                                i -> List.of(
                                        number(0.5 * i),
                                        "1.1",
                                        "2000",
                                        "90",
                                        "0.5",
                                        number(coolantC(i)),
                                        "3000",
                                        number(rpm(i)),
                                        "250",
                                        number(kmh(i))))));
        all.add(usualCase(
                "units of the columns alone",
                "t [s],a1 [°C],a2 [rpm],a3 [km/h]\n"
                        + rows(
                                ",",
                                i -> List.of(number(0.5 * i), number(coolantC(i)), number(rpm(i)), number(kmh(i))))));
        all.add(beside("units behind numbers", "Oil temp", i -> (80 + i) + " °C", OIL, "°C", i -> 353.15 + i));
        all.add(beside(
                "a column of words",
                "Gear state,Oil temp [°C]",
                i -> "D" + i % 5 + "x," + (80 + i),
                OIL,
                "°C",
                i -> 353.15 + i));
    }

    private static void encodings(List<LogCase> all) {
        String text = usualText();
        all.add(usualCase("a byte-order mark", "\ufeff" + text));
        all.add(usual(LogCase.of("UTF-16 little-endian with its mark", "\ufeff" + text, StandardCharsets.UTF_16LE)));
        all.add(usual(LogCase.of("UTF-16 big-endian with its mark", "\ufeff" + text, StandardCharsets.UTF_16BE)));
        all.add(usual(LogCase.of("UTF-16 little-endian without a mark", text, StandardCharsets.UTF_16LE)));
        all.add(usual(LogCase.of("UTF-16 big-endian without a mark", text, StandardCharsets.UTF_16BE)));
        all.add(usual(LogCase.of(
                "Latin-1",
                "Zeit;Kühlmittel [°C];Motordrehzahl [1/min];Geschwindigkeit [km/h]\n" + rows(";", LogCorpus::usual),
                StandardCharsets.ISO_8859_1)));
        all.add(usual(LogCase.of("UTF-32 with its mark", "\ufeff" + text, Charset.forName("UTF-32LE"))));
        all.add(usualCase("a degree sign read wrongly before", text.replace("°", "Â°")));
        byte[] tail = Arrays.copyOf(
                text.getBytes(StandardCharsets.UTF_8), text.getBytes(StandardCharsets.UTF_8).length + 5000);
        all.add(usual(new LogCase("zeros where the current failed", tail)));
    }

    private static void times(List<LogCase> all) {
        all.add(time("milliseconds in the heading", "Time [ms]", i -> number(500 * i)));
        all.add(time("milliseconds by their steps", "time", i -> number(500 * i)));
        all.add(time("microseconds by their steps", "timestamp", i -> number(500_000.0 * i)));
        all.add(time("minutes", "Time (min)", i -> Double.toString(i / 120.0)));
        all.add(time("h:m:s", "Time", i -> clock(10 * 3600 + 59 * 60 + 50, i)));
        all.add(time("h:m:s past midnight", "Time", i -> clock(86_390, i)));
        all.add(time(
                "m:s",
                "Lap time elapsed",
                i -> String.format(Locale.ROOT, "%02d:%04.1f", 0.5 * i < 60 ? 0 : 1, 0.5 * i)));
        all.add(time(
                "h:m:s in two halves of the day",
                "Time",
                i -> String.format(Locale.ROOT, "%02d:%02d:%02d.%d %s", 12, 0, i / 2, 5 * (i % 2), "PM")));
        all.add(time("a date with T and Z", "Timestamp", i -> "2026-05-01T" + clock(43_190, i) + "Z"));
        all.add(time("a date with a blank and an offset", "Date Time", i -> "2026-05-01 " + clock(3600, i) + "+02:00"));
        all.add(time("a German date", "Datum Uhrzeit", i -> "31.12.2025 " + clock(3600, i)));
        all.add(time("a date with the month first", "DateTime", i -> "12/31/2025 " + clock(3600, i)));
        all.add(time("a date with a named month", "Date time", i -> "01-May-2026 " + clock(3600, i)));
        all.add(time("seconds of an epoch", "time", i -> number(1_777_000_000.0 + 0.5 * i)));
        all.add(time("milliseconds of an epoch", "time", i -> number(1_777_000_000_000.0 + 500 * i)));
        all.add(usualCase(
                "a date in one column, the clock in another",
                "Date,Time,Coolant [°C],Engine speed [rpm],Road speed [km/h]\n"
                        + rows(",", i -> {
                            List<String> cells = new ArrayList<>(withTime(clock(3600, i), i));
                            cells.add(0, "2026-05-01");
                            return cells;
                        })));
        all.add(usualCase(
                "time in the last column",
                "Coolant [°C],Engine speed [rpm],Road speed [km/h],Time [s]\n"
                        + rows(
                                ",",
                                i -> List.of(number(coolantC(i)), number(rpm(i)), number(kmh(i)), number(0.5 * i)))));
        all.add(usualCase(
                "other columns about times",
                "Time since codes cleared [min],Row number,Injection time [ms],Log time [s],Coolant [°C],RPM,Speed [km/h]\n"
                        + rows(
                                ",",
                                i -> List.of(
                                        "12748",
                                        number(i),
                                        "2.5",
                                        number(0.5 * i),
                                        number(coolantC(i)),
                                        number(rpm(i)),
                                        number(kmh(i))))));
        all.add(LogCase.of(
                        "no time",
                        "Coolant [°C],Fan,Engine speed [rpm]\n"
                                + rows(
                                        ",",
                                        i -> List.of(number(90 - i % 3), number(i % 2), number(900 + 10 * (i % 4)))))
                .column(COOLANT, "|°C", i -> 0)
                .noTime());
    }

    private static LogCase time(String name, String heading, IntFunction<String> time) {
        String text = heading + ",Coolant [°C],Engine speed [rpm],Road speed [km/h]\n"
                + rows(",", i -> withTime(time.apply(i), i));
        return usualCase(name, text);
    }

    private static String clock(int startS, int i) {
        int s = (startS + i / 2) % 86_400;
        return String.format(Locale.ROOT, "%02d:%02d:%02d.%d00", s / 3600, s / 60 % 60, s % 60, 5 * (i % 2));
    }

    private static void units(List<LogCase> all) {
        IntFunction<String> fahrenheit = i -> number(Math.rint((coolantC(i) * 1.8 + 32) * 100) / 100);
        all.add(LogCase.of(
                        "Fahrenheit and mph",
                        "Time [s],Coolant [°F],RPM,Speed [mph]\n"
                                + rows(
                                        ",",
                                        i -> List.of(number(0.5 * i), fahrenheit.apply(i), number(rpm(i)), number(i))))
                .column(COOLANT, "|°F", LogCorpus::coolantK)
                .column(ROAD_SPEED, "|mph", i -> i * 0.44704));
        all.add(LogCase.of(
                        "Fahrenheit by its values, mph beside it",
                        "Time,Coolant,RPM,Speed\n"
                                + rows(
                                        ",",
                                        i -> List.of(number(0.5 * i), number(180 + i), number(rpm(i)), number(kmh(i)))))
                .column(COOLANT, "|°F", i -> (180 + i + 459.67) / 1.8)
                .column(ENGINE_SPEED, "|rpm", LogCorpus::radPerS));
        all.add(LogCase.of(
                        "mph where the temperatures are Fahrenheit",
                        "Time,Coolant [F],Intake air [F],RPM,Speed\n"
                                + rows(
                                        ",",
                                        i -> List.of(
                                                number(0.5 * i),
                                                number(180 + i),
                                                number(90 + i),
                                                number(rpm(i)),
                                                number(i))))
                .column(INTAKE_AIR, "|°F", i -> (90 + i + 459.67) / 1.8)
                .column(ROAD_SPEED, "|mph", i -> i * 0.44704));
        all.add(beside("kPa", "MAP (kPa)", i -> number(30 + i), MANIFOLD_PRESSURE, "kPa", i -> 1000.0 * (30 + i)));
        all.add(beside(
                "mbar",
                "MAP (mbar)",
                i -> number(300 + 10 * i),
                MANIFOLD_PRESSURE,
                "mbar",
                i -> 100.0 * (300 + 10 * i)));
        all.add(beside(
                "psi",
                "MAP (psi)",
                i -> number(5 + 0.25 * i),
                MANIFOLD_PRESSURE,
                "psi",
                i -> (5 + 0.25 * i) * 6894.757293168361));
        all.add(beside(
                "bar by its values",
                "MAP",
                i -> number(0.25 + i / 64.0),
                MANIFOLD_PRESSURE,
                "bar",
                i -> 1e5 * (0.25 + i / 64.0)));
        all.add(beside(
                "mbar by its values",
                "Intake manifold pressure",
                i -> number(400 + 10 * i),
                MANIFOLD_PRESSURE,
                "mbar",
                i -> 100.0 * (400 + 10 * i)));
        all.add(beside(
                "boost in psi",
                "Boost [psi]",
                i -> number(-5 + 0.5 * i),
                BOOST,
                "psi",
                i -> (-5 + 0.5 * i) * 6894.757293168361));
        all.add(beside("hPa of the air", "Barometric pressure [hPa]", i -> "1013", BAROMETER, "hPa", i -> 101_300));
        all.add(beside("per cent", "Throttle position [%]", i -> number(2.5 * i), THROTTLE, "%", i -> 0.025 * i));
        all.add(beside(
                "per cent by its values", "TPS", i -> number(2.5 * i + 0.25), THROTTLE, "%", i -> 0.025 * i + 0.0025));
        all.add(beside("a share of one", "Throttle", i -> number(i / 64.0), THROTTLE, "of 1", i -> i / 64.0));
        all.add(beside("steps of 255", "Pedal position", i -> number(6 * i), PEDAL, "of 255", i -> 6.0 * i / 255));
        all.add(beside("a fan of 0 and 1", "Cooling fan", i -> number(i / 20), FAN, "of 1", i -> i / 20));
        all.add(beside(
                "a fan that is on or off", "Radiator fan", i -> i < 20 ? "OFF" : "On", FAN, "of 1", i -> i / 20));
        all.add(beside("a fan of 0 and 100", "Fan duty", i -> number(100 * (i / 20)), FAN, "%", i -> i / 20));
        all.add(beside("a fan of 0 to 255", "Fan PWM", i -> number(255 * (i / 20)), FAN, "of 255", i -> i / 20));
        all.add(beside(
                "load over a hundred",
                "Calculated load",
                i -> number(2.5 * i + 40.5),
                LOAD,
                "%",
                i -> 0.025 * i + 0.405));
        all.add(beside("volts", "Battery voltage", i -> number(13.5 + i / 64.0), VOLTAGE, "V", i -> 13.5 + i / 64.0));
        all.add(beside("millivolts", "Vbat [mV]", i -> number(13_500 + i), VOLTAGE, "mV", i -> 13.5 + 0.001 * i));
        all.add(beside("kelvin", "Ambient temp [K]", i -> number(298.5), AMBIENT, "K", i -> 298.5));
        all.add(beside(
                "exponents", "MAP (Pa)", i -> (30 + i) + "E+03", MANIFOLD_PRESSURE, "Pa", i -> 1000.0 * (30 + i)));
        all.add(beside("a minus sign of print", "Ambient [°C]", i -> "\u22125.5", AMBIENT, "°C", i -> 267.65));
    }

    private static void rates(List<LogCase> all) {
        all.add(beside(
                "a slow column",
                "Oil temp [°C]",
                i -> i % 10 == 0 ? number(80 + i) : "",
                OIL,
                "°C",
                i -> i % 10 == 0 ? 353.15 + i : Double.NaN));
        all.add(beside(
                "words for nothing",
                "Oil temp [°C]",
                i -> List.of("n/a", "--", "NaN", "80").get(i % 4),
                OIL,
                "°C",
                i -> i % 4 == 3 ? 353.15 : Double.NaN));
        all.add(usualCase(
                "two rates in rows of their own",
                HEADINGS + "\n"
                        + rows(
                                "\n",
                                i -> List.of(
                                        number(0.5 * i) + "," + number(coolantC(i)) + ",,",
                                        number(0.5 * i) + ",," + number(rpm(i)) + "," + number(kmh(i))))));
        all.add(usualCase(
                        "repeated rows",
                        HEADINGS + "\n"
                                + rows("\n", i -> List.of(String.join(",", usual(i)), String.join(",", usual(i)))))
                .repeated(ROWS));
        all.add(beside("a value that stands still", "Ambient temp [°C]", i -> "21", AMBIENT, "°C", i -> 294.15));
        all.add(usualCase("a gap", HEADINGS + "\n" + rows(",", i -> withTime(number(0.5 * i + (i < 20 ? 0 : 30)), i)))
                .time(i -> 0.5 * i + (i < 20 ? 0 : 30))
                .gaps(1));
        all.add(usualCase(
                "an empty column",
                usualText().replace("[km/h]\n", "[km/h],Oil temp\n").replaceAll("(?m)^(\\d.*)$", "$1,")));
    }

    private static void broken(List<LogCase> all) {
        String text = usualText();
        all.add(usualCase("a row that is cut", text.replace("\n5,75,1150,20\n", "\n5,75,115\n"))
                .rows(39)
                .bad(1, 12, "CELLS")
                .skip(10));
        all.add(usualCase("a file that is cut", text.substring(0, text.length() - 8))
                .rows(39)
                .bad(1, 41, "CELLS"));
        all.add(usualCase("a row with cells too many", text.replace("\n5,75,", "\n5,75,75,75,"))
                .rows(39)
                .bad(1, 12, "CELLS")
                .skip(10));
        all.add(usualCase("a quote that does not end", text.replace("\n5,75,1150,20\n", "\n5,\"75,1150,20\n"))
                .rows(39)
                .bad(1, 12, "CELLS")
                .skip(10));
        all.add(usualCase(
                        "a quote amid a cell that does not end",
                        text.replace("\n5,75,1150,20\n", "\n5,7\"5,1150,\"20\n"))
                .rows(39)
                .bad(1, 12, "CELLS")
                .skip(10));
        all.add(usualCase("a cell that is no number", text.replace("\n5,75,1150,", "\n5,ERR7,1150,"))
                .bad(1, 12, "NOT_A_NUMBER")
                .column(COOLANT, "|°C", i -> i == 10 ? Double.NaN : coolantK(i)));
        all.add(usualCase("two cells of a row that are no numbers", text.replace("\n5,75,1150,", "\n5,ERR7,0x47,"))
                .bad(1, 12, "NOT_A_NUMBER")
                .column(COOLANT, "|°C", i -> i == 10 ? Double.NaN : coolantK(i))
                .column(ENGINE_SPEED, "|rpm", i -> i == 10 ? Double.NaN : radPerS(i)));
        all.add(usualCase("a time that is none", text.replace("\n5,75,", "\nfive,75,"))
                .rows(39)
                .bad(1, 12, "TIME")
                .skip(10));
        all.add(usualCase("an empty time", text.replace("\n5,75,", "\n,75,"))
                .rows(39)
                .bad(1, 12, "TIME")
                .skip(10));
        all.add(usualCase("a reading that no car gives", text.replace("\n5,75,", "\n5,999,"))
                .readBad(1)
                .column(COOLANT, "|°C", i -> i == 10 ? Double.NaN : coolantK(i)));
        all.add(usualCase("garbage amid the rows", text.replace("\n5,75,", "\n\u0001\u0002~~ \u0003;;\u0004\n5,75,"))
                .bad(1, 12, "CELLS"));
        all.add(usualCase("zeros amid a row", text.replace("\n5,75,1150,20\n", "\n5,75\0\0\0,1150,20\n"))
                .rows(39)
                .bad(1, 12, "CELLS")
                .skip(10));
        all.add(usualCase("a cell of letters and digits", text.replace(",20\n", ",x20x\n"))
                .bad(1, 12, "NOT_A_NUMBER")
                .column(ROAD_SPEED, "|km/h", i -> i == 10 ? Double.NaN : mPerS(i)));
        all.add(usualCase("a number too large for any", text.replace("\n5,75,", "\n5,1e400,"))
                .bad(1)
                .column(COOLANT, "|°C", i -> i == 10 ? Double.NaN : coolantK(i)));
        all.add(usualCase("digits without end", text.replace("\n5,75,", "\n5,75." + "0".repeat(300) + ",")));
    }

    private static void orders(List<LogCase> all) {
        all.add(usualCase("a restart", HEADINGS + "\n" + rows(",", i -> withTime(number(0.5 * (i % 20)), i)))
                .time(i -> 0.5 * (i % 20))
                .stretches(2));
        all.add(usualCase(
                        "a restart with headings of its own",
                        HEADINGS + "\n" + rows(",", 0, 20, i -> withTime(number(0.5 * i), i)) + HEADINGS + "\n"
                                + rows(",", 20, 40, i -> withTime(number(0.5 * (i - 20)), i)))
                .time(i -> 0.5 * (i % 20))
                .stretches(2));
        all.add(usualCase(
                        "three hours in between",
                        HEADINGS + "\n" + rows(",", i -> withTime(number(0.5 * i + (i < 20 ? 0 : 10_800)), i)))
                .time(i -> 0.5 * (i % 20))
                .stretches(2));
        all.add(usualCase("a row out of order", usualText().replace("\n5,75,", "\n4,75,"))
                .rows(39)
                .bad(1, 12, "ORDER")
                .skip(10));
        all.add(usualCase("one time far ahead", usualText().replace("\n5,75,", "\n99999,75,"))
                .rows(39)
                .bad(1, 12, "ORDER")
                .skip(10));
        all.add(usualCase("one time of zero", usualText().replace("\n5,75,", "\n0,75,"))
                .rows(39)
                .bad(1, 12, "ORDER")
                .skip(10));
        all.add(usualCase("the last time far ahead", usualText().replace("\n19.5,", "\n999999.5,"))
                .rows(39)
                .bad(1, 41, "ORDER"));
    }

    private static void refused(List<LogCase> all) {
        all.add(LogCase.of("nothing", "").refused(Reason.EMPTY));
        all.add(LogCase.of("blanks alone", " \n\n \t\n").refused(Reason.EMPTY));
        all.add(LogCase.of("a letter", "Dear shop,\nhere is the log, as you asked.\nYours, Jo\n")
                .refused(Reason.NO_ROWS));
        all.add(LogCase.of("headings alone", HEADINGS + "\n").refused(Reason.NO_ROWS));
        all.add(LogCase.of("one column", "coolant\n" + "80\n".repeat(30)).refused(Reason.NO_ROWS));
        all.add(new LogCase("an archive", zipped()).refused(Reason.NOT_TEXT));
        all.add(LogCase.of("a line without end", usualText() + "1,".repeat(200_000))
                .refused(Reason.LINE_TOO_LONG));
        all.add(LogCase.of("a line without end at the beginning", "x".repeat(300_000))
                .refused(Reason.LINE_TOO_LONG));
        all.add(LogCase.of(
                        "columns without end",
                        HEADINGS + ",a".repeat(2000) + "\n" + ("1,2,3,4" + ",5".repeat(2000) + "\n").repeat(3))
                .refused(Reason.TOO_MANY_COLUMNS));
        all.add(LogCase.of("cells without end in one row", usualText() + "1,2" + ",3".repeat(2000) + "\n")
                .refused(Reason.TOO_MANY_COLUMNS));
        all.add(LogCase.of("a cell without end", usualText() + "20," + "7".repeat(3000) + ",1,2\n")
                .refused(Reason.CELL_TOO_LONG));
        all.add(LogCase.of(
                        "a comma between cells and in decimals",
                        "time,coolant,rpm\n"
                                + rows(
                                        ",",
                                        i -> List.of(
                                                (0.5 * i + "").replace('.', ','),
                                                (coolantC(i) + 0.1 + "").replace('.', ','),
                                                number(rpm(i)))))
                .refused(Reason.COMMA_TWICE));
    }

    private static byte[] zipped() {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (GZIPOutputStream out = new GZIPOutputStream(bytes)) {
            out.write(usualText().repeat(3).getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }
}
