package headertank.app.account.password;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a password must be, after NIST SP 800-63B-4, 3.1.1.2: long, and nothing that is guessed first. No rule asks for kinds of
 * characters, and none for a change from time to time.
 */
public final class PasswordRules {

    /** Where nothing but the password is asked for. */
    static final int SHORTEST = 15;

    /** Far more than the 64 that must be allowed; a bound all the same, for hashing takes longer the longer it is. */
    static final int LONGEST = 200;

    /** What has to be left besides words, rows of keys and repeats; modelling choice. */
    private static final int LEAST_OF_ITS_OWN = 5;

    private static final int WORDS_AT_MOST = 2;
    private static final int ROW = 4;
    private static final int LEAST_DIFFERENT = 5;
    private static final int LONGEST_REPEAT = 8;

    private static final List<String> ROWS = Stream.of(
                    "abcdefghijklmnopqrstuvwxyz",
                    "01234567890123456789",
                    "qwertyuiopasdfghjklzxcvbnm",
                    "qwertzuiopasdfghjklyxcvbnm",
                    "1qaz2wsx3edc4rfv5tgb6yhn7ujm")
            .flatMap(r -> Stream.of(r, new StringBuilder(r).reverse().toString()))
            .toList();

    private static final List<String> COMMON = common();

    private PasswordRules() {}

    /** A password as it is compared and hashed, however a keyboard has put its letters together. */
    static String plain(CharSequence typed) {
        return Normalizer.normalize(typed, Normalizer.Form.NFKC);
    }

    /**
     * What is wrong with a password.
     *
     * @param words that whoever guesses knows: the login, names of person and shop
     * @return key of the sentence for a person
     */
    public static Optional<String> fault(String typed, Collection<String> words) {
        String password = plain(typed == null ? "" : typed);
        int length = password.codePointCount(0, password.length());
        if (length < SHORTEST) {
            return Optional.of("account.password.short");
        }
        if (length > LONGEST) {
            return Optional.of("account.password.long");
        }
        String small = password.toLowerCase(Locale.ROOT);
        boolean guessable =
                small.codePoints().distinct().count() < LEAST_DIFFERENT || isRepeat(small) || isWords(small, words);
        return guessable ? Optional.of("account.password.guessable") : Optional.empty();
    }

    private static boolean isRepeat(String text) {
        for (int n = 1; n <= LONGEST_REPEAT; n++) {
            String unit = text.substring(0, n);
            if (unit.repeat(text.length() / n + 1).startsWith(text)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isWords(String small, Collection<String> words) {
        List<String> known = new ArrayList<>(COMMON);
        words.stream()
                .flatMap(w -> Stream.concat(Stream.of(w), Stream.of(w.split("[\\s.@_-]+"))))
                .map(w -> w.toLowerCase(Locale.ROOT).strip())
                .filter(w -> w.length() >= 3)
                .forEach(known::add);
        known.sort(Comparator.comparing(String::length).reversed());
        String left = letters(withoutRows(small));
        int found = 0;
        for (String word : known) {
            String plain = letters(word);
            if (!plain.isEmpty() && found < WORDS_AT_MOST && left.contains(plain)) {
                left = left.replace(plain, "");
                found++;
            }
        }
        return left.replaceAll("[\\p{Punct}\\p{Nd}\\s]", "").length() < LEAST_OF_ITS_OWN;
    }

    /** Without pieces of rows that keys or the alphabet have. */
    private static String withoutRows(String text) {
        StringBuilder left = new StringBuilder();
        int at = 0;
        while (at < text.length()) {
            int end = at;
            while (end < text.length() && isInRow(text.substring(at, end + 1))) {
                end++;
            }
            if (end - at < ROW) {
                left.append(text.charAt(at));
                at++;
            } else {
                at = end;
            }
        }
        return left.toString();
    }

    private static boolean isInRow(String piece) {
        return ROWS.stream().anyMatch(r -> r.contains(piece));
    }

    /** Digits and signs that stand for letters as those letters. */
    private static String letters(String text) {
        return text.replace('0', 'o')
                .replace('1', 'i')
                .replace('3', 'e')
                .replace('4', 'a')
                .replace('@', 'a')
                .replace('5', 's')
                .replace('$', 's')
                .replace('7', 't')
                .replace("ß", "ss");
    }

    private static List<String> common() {
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(
                PasswordRules.class.getResourceAsStream("/passwords/common.txt"), StandardCharsets.UTF_8))) {
            return lines.lines()
                    .filter(l -> !l.isBlank() && !l.startsWith("#"))
                    .map(String::strip)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
