package org.undercap.scenario;

import java.util.Comparator;

/**
 * A mistake in a file that a user wrote.
 *
 * @param file name of the file as it was given
 * @param line line of the mistake (from 1), or 0 for the file as a whole
 * @param column column of the mistake (characters, from 1), or 0 for the file as a whole
 * @param field the field in question, as in {@code colony.bees}; entries of lists have the name of
 *     their list; empty if no field can be named
 * @param message what is wrong, with the value and what would be right; lower case, no full stop
 * @param hint what to try, possibly empty
 */
public record Problem(
    String file, int line, int column, String field, String message, String hint) {

  /** The order of the file. */
  static final Comparator<Problem> ORDER =
      Comparator.comparing(Problem::file)
          .thenComparingInt(Problem::line)
          .thenComparingInt(Problem::column)
          .thenComparing(Problem::message);

  /** The same problem without what to try. */
  Problem withoutHint() {
    return new Problem(file, line, column, field, message, "");
  }

  /**
   * The problem for people and editors: {@code file:line:column: error: field: message}, and the
   * hint on a second line. Letters that a terminal would obey become blanks.
   *
   * @return one or two lines without a line end
   */
  public String text() {
    String subject = field.isEmpty() ? "" : field + ": ";
    String first = new Place(file, line, column) + ": error: " + subject + message;
    return hint.isEmpty() ? plain(first) : plain(first) + "\n  hint: " + plain(hint);
  }

  private static String plain(String words) {
    return words.replaceAll("[\\p{Cntrl}\\x{80}-\\x{9f}]+", " ");
  }
}
