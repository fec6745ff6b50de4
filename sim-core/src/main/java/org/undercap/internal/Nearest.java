package org.undercap.internal;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the known word that a mistyped word probably meant, by edit distance. */
public final class Nearest {

  private Nearest() {}

  /**
   * The known word nearest to a mistyped one, if one is near enough to be worth suggesting: at most
   * a third of the letters differ, or one begins with the other. Upper and lower case are the same.
   *
   * @param typed what was written
   * @param known the words that are accepted; of equally near ones the first wins
   * @return the suggestion, if any
   */
  public static Optional<String> to(String typed, Collection<String> known) {
    String wanted = typed.toLowerCase(Locale.ROOT);
    return known.stream()
        .filter(word -> isNear(wanted, word.toLowerCase(Locale.ROOT)))
        .min(Comparator.comparingInt(word -> distance(wanted, word.toLowerCase(Locale.ROOT))));
  }

  /**
   * An exception for an unknown word: names the word, the nearest and then all accepted ones.
   *
   * @param kind what kind of thing the word names, as in "climate"
   * @param typed what was written
   * @param accepted the words that are accepted
   * @return an exception to throw
   */
  public static IllegalArgumentException unknown(
      String kind, String typed, Collection<String> accepted) {
    String list =
        to(typed, accepted)
            .map(word -> "did you mean \"" + word + "\"? Accepted: ")
            .orElse("accepted: ");
    return new IllegalArgumentException(
        "unknown " + kind + " \"" + typed + "\"; " + list + String.join(", ", accepted));
  }

  /**
   * The least number of letters to insert, delete, replace or swap with their neighbour to turn one
   * word into the other (restricted Damerau-Levenshtein distance).
   *
   * @param a a word
   * @param b another word
   * @return the distance (letters)
   */
  public static int distance(String a, String b) {
    int[][] cost = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        cost[i][j] = i == 0 || j == 0 ? i + j : step(cost, a, b, i, j);
      }
    }
    return cost[a.length()][b.length()];
  }

  private static int step(int[][] cost, String a, String b, int i, int j) {
    char last = a.charAt(i - 1);
    int best = cost[i - 1][j - 1] + (last == b.charAt(j - 1) ? 0 : 1);
    best = Math.min(best, 1 + Math.min(cost[i - 1][j], cost[i][j - 1]));
    boolean swapped =
        i > 1 && j > 1 && last == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(best, cost[i - 2][j - 2] + 1) : best;
  }

  private static boolean isNear(String typed, String word) {
    boolean part = typed.length() >= 3 && (word.startsWith(typed) || typed.startsWith(word));
    int most = Math.max(1, word.length() / 3);
    return part
        || (Math.abs(typed.length() - word.length()) <= most && distance(typed, word) <= most);
  }
}
