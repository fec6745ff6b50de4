package org.undercap.cli.report;

import java.util.Arrays;
import java.util.stream.Collectors;

/** A table in Markdown. */
final class MarkdownTable {
  private final StringBuilder lines = new StringBuilder();
  private final int columns;

  MarkdownTable(String... headings) {
    columns = headings.length;
    row(headings);
    row(Arrays.stream(headings).map(heading -> "---").toArray(String[]::new));
  }

  MarkdownTable row(String... cells) {
    if (cells.length != columns) {
      throw new IllegalArgumentException(cells.length + " cells for " + columns + " columns");
    }
    lines.append(
        Arrays.stream(cells)
            .map(cell -> cell.replace("|", "\\|"))
            .collect(Collectors.joining(" | ", "| ", " |\n")));
    return this;
  }

  /** The lines, each ended by a line feed. */
  String render() {
    return lines.toString();
  }
}
