package org.shutoffbench.harness.scenario.file;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the word that a user probably meant. */
public final class NearestKey {

    private NearestKey() {}

    /** The allowed word nearest to the one found, if any is near: at most a third of its letters differ, rounded up, case ignored. */
    public static Optional<String> to(String found, Collection<String> allowed) {
        String plain = Tree.plain(found).toLowerCase(Locale.ROOT);
        return allowed.stream()
                .min(Comparator.comparingInt((String word) -> distance(plain, lower(word)))
                        .thenComparing(Comparator.naturalOrder()))
                .filter(word -> distance(plain, lower(word)) <= (Math.max(plain.length(), word.length()) + 2) / 3);
    }

    /** A remedy: the nearest word where there is one, then all that is allowed. */
    public static String remedy(String found, Collection<String> allowed) {
        String all = "allowed: " + String.join(", ", allowed);
        return to(found, allowed)
                .map(word -> "did you mean \"" + word + "\"? " + all)
                .orElse(all);
    }

    private static String lower(String word) {
        return Tree.plain(word).toLowerCase(Locale.ROOT);
    }

    /** Least number of letters to insert, drop, replace or swap with a neighbour. */
    private static int distance(String a, String b) {
        if (a.length() > 100) {
            return a.length();
        }
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                    continue;
                }
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                d[i][j] = Math.min(d[i - 1][j - 1] + change, 1 + Math.min(d[i - 1][j], d[i][j - 1]));
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }
}
