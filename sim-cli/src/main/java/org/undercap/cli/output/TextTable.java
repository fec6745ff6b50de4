package org.undercap.cli.output;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * A table for a terminal: a header, a line below it, then the rows; no other lines. Where it would
 * be too wide, the widest columns are narrowed and their text is wrapped between words. A word is
 * never broken, so that names can be copied.
 *
 * <pre>{@code
 * new TextTable().text("place").number("mites (per 100 bees)").row("Ontario", "3").render()
 * }</pre>
 */
public final class TextTable {
  /** Width that every terminal has (characters). */
  public static final int WIDTH = 80;

  private static final String GAP = "  ";

  private final List<Heading> headings = new ArrayList<>();
  private final List<String[]> rows = new ArrayList<>();

  /** Creates a table without columns and rows. */
  public TextTable() {}

  /**
   * Adds a column of text, aligned left, wrapped if need be.
   *
   * @param header its header; may hold line ends
   * @return this table
   */
  public TextTable text(String header) {
    return column(header, false, true);
  }

  /**
   * Adds a column of names or ranges, aligned left, never wrapped.
   *
   * @param header its header; may hold line ends
   * @return this table
   */
  public TextTable name(String header) {
    return column(header, false, false);
  }

  /**
   * Adds a column of numbers, aligned right, never wrapped.
   *
   * @param header its header with the unit; may hold line ends
   * @return this table
   */
  public TextTable number(String header) {
    return column(header, true, false);
  }

  /**
   * Adds a column whose cells may list several numbers, aligned right, wrapped if need be.
   *
   * @param header its header with the unit; may hold line ends
   * @return this table
   */
  public TextTable numbers(String header) {
    return column(header, true, true);
  }

  /**
   * Adds a row.
   *
   * @param cells one text per column; may hold line ends
   * @return this table
   * @throws IllegalArgumentException if there are not as many cells as columns
   */
  public TextTable row(String... cells) {
    if (cells.length != headings.size()) {
      throw new IllegalArgumentException(
          cells.length + " cells for " + headings.size() + " columns");
    }
    rows.add(Arrays.stream(cells).map(Unbroken::join).toArray(String[]::new));
    return this;
  }

  /**
   * The table as text.
   *
   * @return lines without blanks at their ends, each ended by a line feed
   */
  public String render() {
    int[] widths = widths();
    StringBuilder table = new StringBuilder();
    addRow(table, widths, headings.stream().map(Heading::text).toArray(String[]::new));
    table.append("-".repeat(total(widths))).append('\n');
    rows.forEach(row -> addRow(table, widths, row));
    return table.toString();
  }

  /** Adds as many lines as the cell needs that has the most. */
  private void addRow(StringBuilder table, int[] widths, String[] cells) {
    List<List<String>> wrapped = new ArrayList<>();
    for (int i = 0; i < widths.length; i++) {
      wrapped.add(wrap(cells[i], widths[i]));
    }
    int lines = wrapped.stream().mapToInt(List::size).max().orElse(0);
    for (int line = 0; line < lines; line++) {
      StringBuilder text = new StringBuilder();
      for (int i = 0; i < widths.length; i++) {
        String part = line < wrapped.get(i).size() ? wrapped.get(i).get(line) : "";
        String blanks = " ".repeat(widths[i] - part.length());
        text.append(i == 0 ? "" : GAP);
        text.append(headings.get(i).right ? blanks + part : part + blanks);
      }
      table.append(Unbroken.release(text.toString()).stripTrailing()).append('\n');
    }
  }

  /** The lines of a cell, broken at blanks. */
  private static List<String> wrap(String cell, int width) {
    List<String> lines = new ArrayList<>();
    for (String line : cell.split("\n", -1)) {
      String rest = line;
      while (rest.length() > width) {
        int blank = rest.lastIndexOf(' ', width);
        lines.add(rest.substring(0, blank));
        rest = rest.substring(blank + 1);
      }
      lines.add(rest);
    }
    return lines;
  }

  private TextTable column(String header, boolean right, boolean wraps) {
    headings.add(new Heading(header, right, wraps));
    return this;
  }

  /** Content widths: as wide as the longest line, then the widest narrowed until the table fits. */
  private int[] widths() {
    int[] widths = longest("\n");
    int[] least = longest("\\s+");
    for (int i = 0; i < widths.length; i++) {
      least[i] = headings.get(i).wraps ? least[i] : widths[i];
    }
    while (total(widths) > WIDTH) {
      int widest = -1;
      for (int i = 0; i < widths.length; i++) {
        if (widths[i] > least[i] && (widest < 0 || widths[i] > widths[widest])) {
          widest = i;
        }
      }
      if (widest < 0) {
        return widths; // A word is wider than its share of the line; it stays whole.
      }
      widths[widest]--;
    }
    return widths;
  }

  /** The longest part of each column when its header and cells are split. */
  private int[] longest(String separator) {
    int[] longest = new int[headings.size()];
    for (int i = 0; i < longest.length; i++) {
      int column = i;
      longest[i] =
          Stream.concat(Stream.of(headings.get(i).text), rows.stream().map(cells -> cells[column]))
              .flatMap(cell -> Arrays.stream(cell.split(separator, -1)))
              .mapToInt(String::length)
              .max()
              .orElse(0);
    }
    return longest;
  }

  /** Width of the table (characters). */
  private static int total(int[] widths) {
    return Arrays.stream(widths).sum() + GAP.length() * (widths.length - 1);
  }

  private record Heading(String text, boolean right, boolean wraps) {}
}
