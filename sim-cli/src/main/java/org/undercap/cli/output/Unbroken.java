package org.undercap.cli.output;

import java.util.regex.Pattern;

/** Keeps together what reads badly on two lines: a number and its unit, a word and its mark. */
final class Unbroken {
  private static final char JOINT = '\u00a0';
  private static final Pattern BEFORE_UNIT =
      Pattern.compile("(?<=\\d) (?=(?:%|C|N|S|days?)(?:[\\s,.;:)]|$))");
  private static final Pattern BEFORE_MARK = Pattern.compile("(?<=\\S) (?=\\*(?:\\s|$))");

  private Unbroken() {}

  /** The text with joints in place of the blanks at which it must not be broken. */
  static String join(String text) {
    String joint = String.valueOf(JOINT);
    String units = BEFORE_UNIT.matcher(text).replaceAll(joint);
    return BEFORE_MARK.matcher(units).replaceAll(joint);
  }

  /** The text with blanks in place of the joints. */
  static String release(String text) {
    return text.replace(JOINT, ' ');
  }
}
