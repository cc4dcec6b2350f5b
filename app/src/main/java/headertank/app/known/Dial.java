package headertank.app.known;

import headertank.calc.evidence.SettledReading;

/** How a temperature is read off. */
enum Dial {
    /** A needle that somebody glances at. */
    NEEDLE(SettledReading.NEEDLE_K),
    /** Digits. */
    DIGITS(SettledReading.DISPLAY_K);

    private final double sigmaK;

    Dial(double sigmaK) {
        this.sigmaK = sigmaK;
    }

    /** One standard deviation of a reading [K]. */
    double sigmaK() {
        return sigmaK;
    }
}
