package org.undercap.internal;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads a comma-separated table that ships with the library.
 *
 * <p>The format is RFC 4180 in UTF-8 with two additions: lines that begin with {@code #} outside a
 * quoted field are comments, and empty lines are skipped. The first other line names the columns.
 * Fields are trimmed unless quoted. A defect is a mistake of the library, not of its user, hence an
 * {@link IllegalStateException} that names file and line.
 */
public final class CsvResource {

  private final String name;
  private final String text;
  private final List<CsvRow> rows = new ArrayList<>();
  private List<String> header = List.of();
  private int position;
  private int line = 1;

  private CsvResource(String name, String text) {
    this.name = name;
    this.text = text;
  }

  /**
   * Reads a table that lies beside a class.
   *
   * @param anchor class in whose package the table lies
   * @param name file name of the table
   * @return the rows in the order of the file
   * @throws IllegalStateException if the file is missing or malformed
   */
  public static List<CsvRow> read(Class<?> anchor, String name) {
    try (InputStream stream = anchor.getResourceAsStream(name)) {
      if (stream == null) {
        throw new IllegalStateException(name + ": not found beside " + anchor.getName());
      }
      return parse(name, new String(stream.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(name + ": cannot be read", e);
    }
  }

  /**
   * Reads a table from its text.
   *
   * @param name name of the table for messages
   * @param text the whole table
   * @return the rows in the order of the text
   * @throws IllegalStateException if the text is malformed
   */
  public static List<CsvRow> parse(String name, String text) {
    CsvResource reader = new CsvResource(name, text);
    while (reader.position < text.length()) {
      reader.readLine();
    }
    return List.copyOf(reader.rows);
  }

  private void readLine() {
    if (text.charAt(position) == '#') {
      skipLine();
      return;
    }
    int start = line;
    List<String> fields = readFields();
    if (fields.size() == 1 && fields.get(0).isEmpty()) {
      return;
    }
    if (header.isEmpty()) {
      header = List.copyOf(fields);
    } else if (fields.size() != header.size()) {
      throw defect(start, fields.size() + " fields, the header has " + header.size());
    } else {
      rows.add(new CsvRow(name, start, header, List.copyOf(fields)));
    }
  }

  private void skipLine() {
    int end = text.indexOf('\n', position);
    position = end < 0 ? text.length() : end + 1;
    line++;
  }

  private List<String> readFields() {
    List<String> fields = new ArrayList<>();
    do {
      fields.add(peek() == '"' ? quotedField() : plainField());
    } while (consume(','));
    consume('\r');
    if (!consume('\n') && position < text.length()) {
      throw defect(line, "unexpected text after a quoted field");
    }
    line++;
    return fields;
  }

  private String plainField() {
    int start = position;
    int lineEnd = orEnd(text.indexOf('\n', start));
    int comma = orEnd(text.indexOf(',', start));
    position = Math.min(lineEnd, comma);
    return text.substring(start, position).trim();
  }

  private String quotedField() {
    int start = line;
    StringBuilder field = new StringBuilder();
    int from = position + 1;
    do {
      int end = text.indexOf('"', position + 1);
      if (end < 0) {
        throw defect(start, "a quoted field is not closed");
      }
      field.append(text, from, end);
      position = end + 1;
      from = position; // a doubled quote is one quote of the field
    } while (peek() == '"');
    for (int i = field.indexOf("\n"); i >= 0; i = field.indexOf("\n", i + 1)) {
      line++;
    }
    return field.toString();
  }

  private int orEnd(int found) {
    return found < 0 ? text.length() : found;
  }

  private char peek() {
    return position < text.length() ? text.charAt(position) : '\n';
  }

  private boolean consume(char wanted) {
    boolean found = position < text.length() && text.charAt(position) == wanted;
    position += found ? 1 : 0;
    return found;
  }

  private IllegalStateException defect(int at, String what) {
    return new IllegalStateException(name + ":" + at + ": " + what);
  }
}
