package org.sawfly.file;

import java.util.Collection;
import java.util.Locale;

/** Finds the known word nearest to a misspelt one. */
final class Spelling {
    private Spelling() {}

    /** The nearest known word, or an empty text when none is near. */
    static String nearest(String written, Collection<String> known) {
        String word = written.toLowerCase(Locale.ROOT).replace('-', '_').replace(' ', '_');
        String best = "";
        int least = Math.max(1, Math.min(3, word.length() / 3)) + 1;
        for (String one : known) {
            int distance = distance(word, one.toLowerCase(Locale.ROOT));
            if (distance < least) {
                least = distance;
                best = one;
            }
        }
        return best;
    }

    /** Letters to add, drop, replace or swap with the neighbour (optimal string alignment). */
    static int distance(String a, String b) {
        if (a.length() > 100 || b.length() > 100) {
            return Integer.MAX_VALUE;
        }
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            d[i][0] = i;
        }
        for (int j = 0; j <= b.length(); j++) {
            d[0][j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            for (int j = 1; j <= b.length(); j++) {
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                d[i][j] = Math.min(Math.min(d[i - 1][j] + 1, d[i][j - 1] + 1), d[i - 1][j - 1] + change);
                boolean swapped =
                        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
                if (swapped) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }
}
