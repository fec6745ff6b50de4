package org.undercap.cli.batch;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A part of a design: the k-th of n parts of about the same size. Parts are made of whole blocks.
 *
 * @param part which, 1 to {@code parts}
 * @param parts how many
 */
public record Shard(int part, int parts) {
  /** The whole design. */
  public static final Shard WHOLE = new Shard(1, 1);

  private static final int MOST = 100_000;
  private static final Pattern TEXT = Pattern.compile("(\\d{1,6})/(\\d{1,6})");

  /**
   * Checks the numbers.
   *
   * @param part which, 1 to {@code parts}
   * @param parts how many, 1 to 100,000
   * @throws IllegalArgumentException if a number is out of range
   */
  public Shard {
    if (parts < 1 || parts > MOST || part < 1 || part > parts) {
      throw new IllegalArgumentException(
          "shard " + part + "/" + parts + " must be one of 1/N to N/N with N up to " + MOST);
    }
  }

  /**
   * Reads a shard.
   *
   * @param text as in {@code 3/10}
   * @return the shard
   * @throws IllegalArgumentException if it is none
   */
  public static Shard of(String text) {
    Matcher numbers = TEXT.matcher(text);
    if (!numbers.matches()) {
      throw new IllegalArgumentException("'" + text + "' must be written as in 3/10");
    }
    return new Shard(Integer.parseInt(numbers.group(1)), Integer.parseInt(numbers.group(2)));
  }

  /**
   * The first block of this part.
   *
   * @param blocks blocks of the whole design
   * @return its number, from 0
   */
  public long from(long blocks) {
    return (part - 1) * blocks / parts;
  }

  /**
   * The first block after this part.
   *
   * @param blocks blocks of the whole design
   * @return its number, from 0
   */
  public long until(long blocks) {
    return part * blocks / parts;
  }

  /**
   * Whether it begins the design, so that its tables have the header.
   *
   * @return true for the first
   */
  public boolean isFirst() {
    return part == 1;
  }

  /**
   * What is added to the names of its files, so that they sort in the order of the parts.
   *
   * @return empty text for a whole design, else as in {@code -03-of-10}
   */
  public String suffix() {
    int digits = Integer.toString(parts).length();
    return parts == 1 ? "" : String.format(Locale.ROOT, "-%0" + digits + "d-of-%d", part, parts);
  }
}
