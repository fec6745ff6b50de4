package org.undercap.scenario.io;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A field of a line of comma-separated values.
 *
 * @param text its text without blanks around it and without quotes
 * @param column where it begins (characters, from 1)
 */
record CsvField(String text, int column) {
  /**
   * The fields of a line.
   *
   * @param line the line without its end
   * @return the fields, at least one; empty if a quoted field is not closed or text follows it
   */
  static Optional<List<CsvField>> of(String line) {
    List<CsvField> fields = new ArrayList<>();
    int at = 0;
    while (true) {
      int begin = at;
      while (at < line.length() && line.charAt(at) == ' ') {
        at++;
      }
      int column = line.codePointCount(0, Math.min(at, line.length())) + 1;
      if (at < line.length() && line.charAt(at) == '"') {
        int end = closing(line, at);
        if (end < 0) {
          return Optional.empty();
        }
        fields.add(new CsvField(line.substring(at + 1, end).replace("\"\"", "\"").strip(), column));
        at = end + 1;
        while (at < line.length() && line.charAt(at) == ' ') {
          at++;
        }
        if (at < line.length() && line.charAt(at) != ',') {
          return Optional.empty();
        }
      } else {
        int comma = line.indexOf(',', begin);
        at = comma < 0 ? line.length() : comma;
        fields.add(new CsvField(line.substring(begin, at).strip(), column));
      }
      if (at >= line.length()) {
        return Optional.of(List.copyOf(fields));
      }
      at++;
    }
  }

  /** Place of the quote that ends a quoted field, or -1. */
  private static int closing(String line, int opening) {
    for (int at = opening + 1; at < line.length(); at++) {
      if (line.charAt(at) == '"') {
        if (at + 1 < line.length() && line.charAt(at + 1) == '"') {
          at++;
        } else {
          return at;
        }
      }
    }
    return -1;
  }
}
