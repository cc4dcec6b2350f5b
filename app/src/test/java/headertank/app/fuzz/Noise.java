package headertank.app.fuzz;

import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.function.Function;

/** Values, names and bytes that a form is not made for; and some that it is. */
final class Noise {

    private static final List<String> VALUES = List.of(
            "",
            " ",
            "x",
            "0",
            "1",
            "2",
            "-1",
            "1.5",
            "007",
            "2147483647",
            "2147483648",
            "-9223372036854775808",
            "9223372036854775808",
            "99999999999999999999999999",
            "1e308",
            "1e999",
            "-1e-999",
            "NaN",
            "Infinity",
            "0x10",
            "1,5",
            "1.000.000,5",
            "90 kW",
            "90 C",
            "1e9 mm",
            "-40 F",
            "true",
            "yes",
            "null",
            "undefined",
            "street",
            "drift",
            "2026-02-30",
            "2026-07-01",
            "+999999999-12-31",
            "-999999999-01-01",
            "0000-00-00",
            "2026-07-01T15:30",
            "+1000000000-01-01T00:00:00Z",
            "00000000-0000-0000-0000-000000000000",
            "not-a-uuid",
            "\0",
            "a\0b",
            "\u0001\u0007\u001b[31m",
            "\ufeffx",
            "\u202eabc",
            "\ud83d\ude97",
            "\ud83d",
            "\udc00x",
            "%00",
            "%zz",
            "%",
            "{0}",
            "{999999999}",
            "{'",
            "'",
            "''; drop table account; --",
            "\\",
            "\\x00",
            "<script>alert(1)</script>",
            "${7*7}",
            "__${7*7}__",
            "*{x}",
            "../../../etc/passwd",
            "a\r\nSet-Cookie: x=y",
            "=1+1",
            "x;=1+1;y",
            "\uff1d1+1",
            "# id: x\n# judged: y\n1,2,3",
            "time,speed\n0,1\n1,2",
            "kind,name\nFAN,x",
            "Europe/Nowhere",
            "METRIC",
            "de");

    private final Random random;

    Noise(Random random) {
        this.random = random;
    }

    /** For a message: without what a terminal would act upon, and short. */
    static String shown(String text) {
        String plain = text.replaceAll("\\p{Cntrl}", "\u25a1");
        return plain.length() > 90 ? plain.substring(0, 90) + "\u2026" + plain.length() : plain;
    }

    boolean oneIn(int n) {
        return random.nextInt(n) == 0;
    }

    <T> T any(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    int below(int n) {
        return random.nextInt(n);
    }

    String value(Class<?> type) {
        if (oneIn(3)) {
            return any(VALUES);
        }
        if (oneIn(12)) {
            return any(List.<Function<String, String>>of(
                            s -> s.repeat(300), s -> s.repeat(5_000), s -> s.repeat(40_000)))
                    .apply(any(List.of("a", "9", "\u00e4 ", "\ud83d\ude97", "1,", "=", "(", "\n")));
        }
        if (type.isEnum()) {
            return String.valueOf(any(List.of(type.getEnumConstants())));
        }
        return switch (type.getSimpleName()) {
            case "int", "Integer", "long", "Long" -> Integer.toString(below(4));
            case "boolean", "Boolean" -> oneIn(2) ? "true" : "false";
            case "UUID" -> new UUID(random.nextLong(), random.nextLong()).toString();
            case "LocalDate" -> "2026-07-0" + (1 + below(9));
            default -> any(VALUES);
        };
    }

    /** The name of a field, or something like it. */
    String name(String of) {
        if (!oneIn(8)) {
            return of;
        }
        return any(List.of(
                of + "[0]",
                of + "[]",
                of + "[x",
                of + "[" + "9".repeat(12) + "]",
                of + "]",
                of + ".class.classLoader",
                of + "\0",
                "_" + of,
                "!" + of,
                "class.module.classLoader.x",
                "",
                "[",
                of.repeat(40),
                of.toUpperCase(java.util.Locale.ROOT),
                "\u00e4\u00f6",
                "a b"));
    }

    /** What stands for a variable of a path. */
    String segment(String usual) {
        return !oneIn(6)
                ? usual
                : any(List.of(
                        "0",
                        "-1",
                        "999999",
                        "9223372036854775808",
                        "x",
                        "%00",
                        "1%00",
                        "%zz",
                        "..",
                        "%2e%2e",
                        "%2F",
                        "1;x=1",
                        "%C3%28",
                        "\u00ff",
                        "%ED%A0%80",
                        "1.5",
                        "%20",
                        "",
                        "a".repeat(3_000),
                        "%F0%9F%9A%97"));
    }

    byte[] bytes() {
        byte[] bytes = new byte[any(List.of(0, 1, 10, 1_000, 60_000))];
        random.nextBytes(bytes);
        byte[] begin = any(List.of(
                new byte[0],
                new byte[] {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, (byte) 0xE1},
                new byte[] {(byte) 0x89, 'P', 'N', 'G', 0x0D, 0x0A, 0x1A, 0x0A},
                "time,rpm,speed\n0,1000,2\n".getBytes(java.nio.charset.StandardCharsets.UTF_8),
                "kind,name\nFAN,\"x\n".getBytes(java.nio.charset.StandardCharsets.UTF_8)));
        System.arraycopy(begin, 0, bytes, 0, Math.min(begin.length, bytes.length));
        return bytes;
    }
}
