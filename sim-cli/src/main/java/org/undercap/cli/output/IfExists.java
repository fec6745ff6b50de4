package org.undercap.cli.output;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** What to do with a file that exists already. */
public enum IfExists {
  /** Stop before anything is done. */
  ERROR,
  /** Keep the file as it is and write the others. */
  SKIP,
  /** Replace the file. */
  OVERWRITE;

  /**
   * The word on the command line.
   *
   * @return the name in lower case
   */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * All words.
   *
   * @return the words on the command line
   */
  public static List<String> words() {
    return Arrays.stream(values()).map(IfExists::word).toList();
  }

  /**
   * The choice that a word means.
   *
   * @param word a word as given by {@link #word()}
   * @return the choice
   * @throws IllegalArgumentException if the word is unknown
   */
  public static IfExists of(String word) {
    return Arrays.stream(values())
        .filter(choice -> choice.word().equals(word))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "'" + word + "' is not one of " + String.join(", ", words())));
  }
}
