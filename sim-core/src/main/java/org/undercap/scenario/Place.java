package org.undercap.scenario;

/**
 * Where something stands in a file.
 *
 * @param file name of the file as it was given
 * @param line line (from 1), or 0 for the file as a whole
 * @param column column (characters, from 1), or 0 for the file as a whole
 */
public record Place(String file, int line, int column) {

  /**
   * The file as a whole.
   *
   * @param file name of the file as it was given
   * @return a place without line and column
   */
  public static Place of(String file) {
    return new Place(file, 0, 0);
  }

  /**
   * The place as editors and compilers write it.
   *
   * @return {@code file:line:column}, or {@code file} alone
   */
  @Override
  public String toString() {
    return line == 0 ? file : file + ":" + line + ":" + column;
  }
}
