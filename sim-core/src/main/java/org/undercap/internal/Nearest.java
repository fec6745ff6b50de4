package org.undercap.internal;

import java.util.Arrays;
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
   * An exception for an unknown word: names the word, the accepted ones and the nearest.
   *
   * @param kind what kind of thing the word names, as in "climate"
   * @param typed what was written
   * @param accepted the words that are accepted
   * @return an exception to throw
   */
  public static IllegalArgumentException unknown(
      String kind, String typed, Collection<String> accepted) {
    String hint = to(typed, accepted).map(word -> "; did you mean \"" + word + "\"?").orElse("");
    return new IllegalArgumentException(
        "unknown " + kind + " \"" + typed + "\"; accepted: " + String.join(", ", accepted) + hint);
  }

  /**
   * The least number of letters to insert, delete or replace to turn one word into the other
   * (Levenshtein distance).
   *
   * @param a a word
   * @param b another word
   * @return the distance (letters)
   */
  public static int distance(String a, String b) {
    int[] above = new int[b.length() + 1];
    Arrays.setAll(above, j -> j);
    for (int i = 1; i <= a.length(); i++) {
      int[] row = new int[b.length() + 1];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int replaced = above[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        row[j] = Math.min(replaced, 1 + Math.min(above[j], row[j - 1]));
      }
      above = row;
    }
    return above[b.length()];
  }

  private static boolean isNear(String typed, String word) {
    boolean part = typed.length() >= 3 && (word.startsWith(typed) || typed.startsWith(word));
    return part || distance(typed, word) <= Math.max(1, word.length() / 3);
  }
}
