package org.undercap.cli.output;

import com.github.freva.asciitable.AsciiTable;
import com.github.freva.asciitable.Column;
import com.github.freva.asciitable.HorizontalAlign;
import com.github.freva.asciitable.OverflowBehaviour;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
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

  /** What the library leaves free left and right of a cell (characters). */
  private static final int PADDING = 2;

  /** Places in the library's list of border characters that draw the line below the header. */
  private static final int RULE_FROM = 7;

  private static final int RULE_TO = 11;

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
    return column(header, HorizontalAlign.LEFT, true);
  }

  /**
   * Adds a column of names or ranges, aligned left, never wrapped.
   *
   * @param header its header; may hold line ends
   * @return this table
   */
  public TextTable name(String header) {
    return column(header, HorizontalAlign.LEFT, false);
  }

  /**
   * Adds a column of numbers, aligned right, never wrapped.
   *
   * @param header its header with the unit; may hold line ends
   * @return this table
   */
  public TextTable number(String header) {
    return column(header, HorizontalAlign.RIGHT, false);
  }

  /**
   * Adds a column whose cells may list several numbers, aligned right, wrapped if need be.
   *
   * @param header its header with the unit; may hold line ends
   * @return this table
   */
  public TextTable numbers(String header) {
    return column(header, HorizontalAlign.RIGHT, true);
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
    Column[] columns = new Column[widths.length];
    for (int i = 0; i < widths.length; i++) {
      Heading heading = headings.get(i);
      columns[i] =
          new Column()
              .header(heading.text)
              .headerAlign(heading.align)
              .dataAlign(heading.align)
              .minWidth(widths[i] + PADDING)
              .maxWidth(widths[i] + PADDING, OverflowBehaviour.NEWLINE);
    }
    return AsciiTable.builder()
        .border(borders())
        .lineSeparator("\n")
        .data(columns, rows.toArray(String[][]::new))
        .asString()
        .lines()
        .map(line -> (line.startsWith("-") ? line.substring(PADDING) : line.substring(1)))
        .map(line -> Unbroken.release(line).stripTrailing() + "\n")
        .collect(Collectors.joining());
  }

  private TextTable column(String header, HorizontalAlign align, boolean wraps) {
    headings.add(new Heading(header, align, wraps));
    return this;
  }

  /** Content widths: as wide as the longest line, then the widest narrowed until the table fits. */
  private int[] widths() {
    int[] widths = longest("\n");
    int[] least = longest("\\s+");
    for (int i = 0; i < widths.length; i++) {
      least[i] = headings.get(i).wraps ? least[i] : widths[i];
    }
    int gaps = PADDING * (widths.length - 1);
    while (Arrays.stream(widths).sum() + gaps > WIDTH) {
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

  private static Character[] borders() {
    Character[] borders = AsciiTable.NO_BORDERS.clone();
    Arrays.fill(borders, RULE_FROM, RULE_TO, null);
    borders[RULE_FROM + 1] = '-';
    return borders;
  }

  private record Heading(String text, HorizontalAlign align, boolean wraps) {}
}
