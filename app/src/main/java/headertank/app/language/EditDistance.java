package headertank.app.language;

/** How many letters lie between two words. */
public final class EditDistance {

    private EditDistance() {}

    /** Letters to put in, take out, change or swap with their neighbour; each place is touched once (optimal string alignment). */
    public static int between(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                    continue;
                }
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                int least = Math.min(d[i - 1][j - 1] + change, 1 + Math.min(d[i - 1][j], d[i][j - 1]));
                boolean swapped =
                        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
                d[i][j] = swapped ? Math.min(least, d[i - 2][j - 2] + 1) : least;
            }
        }
        return d[a.length()][b.length()];
    }
}
