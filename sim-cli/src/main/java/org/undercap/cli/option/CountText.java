package org.undercap.cli.option;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.undercap.monitoring.Tally;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * A count as a user writes it in an option: {@code 13/300} for mites among washed bees, {@code 56}
 * for mites on a board.
 *
 * @param tally the count; of a board over one stretch of days, which must be the same for all
 * @param board whether it is that of a board
 */
public record CountText(Tally tally, boolean board) {
  /** Largest number of mites or bees accepted; more than a colony has. */
  static final int LARGEST = 100_000;

  private static final Pattern FORM = Pattern.compile("(\\d{1,9})(?:\\s*/\\s*(\\d{1,9}))?");

  /**
   * Reads a count.
   *
   * @param text as in {@code 13/300} or {@code 56}
   * @return the count
   * @throws IllegalArgumentException if it is not of this form or a number is out of range
   */
  public static CountText of(String text) {
    Matcher form = FORM.matcher(text.strip());
    if (!form.matches()) {
      throw new IllegalArgumentException(
          "'" + text + "' must be mites/bees as in 13/300, or mites on a board as in 56");
    }
    int mites = within(form.group(1), 0, "mites");
    boolean board = form.group(2) == null;
    int bees = board ? 1 : within(form.group(2), 1, "bees");
    if (!board && mites > bees) {
      throw new IllegalArgumentException(
          "'" + text + "' has more mites than bees; are the two swapped? Write mites/bees");
    }
    return new CountText(new Tally(mites, bees), board);
  }

  static int within(String digits, int least, String what) {
    int number = Integer.parseInt(digits);
    if (number < least || number > LARGEST) {
      throw new IllegalArgumentException(
          what + " " + number + " must be in [" + least + ", " + LARGEST + "]");
    }
    return number;
  }

  /** Reads a count for the command line. */
  static final class Converter implements ITypeConverter<CountText> {
    @Override
    public CountText convert(String text) {
      try {
        return of(text);
      } catch (IllegalArgumentException e) {
        throw new TypeConversionException(e.getMessage());
      }
    }
  }
}
