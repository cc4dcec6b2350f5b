package headertank.app.known;

/**
 * A reading that has settled, as typed in one line.
 *
 * @param shown what the sensor showed
 * @param sensor where it sits, a token; empty for that of the car's gauge
 * @param dial how it is read, a {@link Dial}
 * @param at what the car did: id of a duty, a slash, id of one of its points
 * @param outside air around the car
 */
record ReadingForm(String shown, String sensor, Dial dial, String at, String outside) {

    ReadingForm {
        shown = text(shown);
        sensor = text(sensor);
        dial = dial == null ? Dial.NEEDLE : dial;
        at = text(at);
        outside = text(outside);
    }

    static ReadingForm blank() {
        return new ReadingForm("", "", Dial.NEEDLE, "", "");
    }

    private static String text(String typed) {
        return typed == null ? "" : typed.strip();
    }
}
