package headertank.app.account.password;

import java.security.SecureRandom;

/** A password that the program makes up: random, easy to read out, for one sign-in. */
public final class OneTimePassword {

    /** Without what is taken for something else when read out or copied by hand. */
    private static final String SIGNS = "abcdefghjkmnpqrstuvwxyz23456789";

    /** Twenty signs of these are 99 bits. */
    private static final int GROUPS = 4;

    private static final int GROUP = 5;
    private static final SecureRandom RANDOM = new SecureRandom();

    private OneTimePassword() {}

    public static String next() {
        StringBuilder made = new StringBuilder();
        for (int i = 0; i < GROUPS * GROUP; i++) {
            if (i > 0 && i % GROUP == 0) {
                made.append('-');
            }
            made.append(SIGNS.charAt(RANDOM.nextInt(SIGNS.length())));
        }
        return made.toString();
    }
}
