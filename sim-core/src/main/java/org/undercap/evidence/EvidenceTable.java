package org.undercap.evidence;

import java.util.ArrayList;
import java.util.List;

/** Prints results as a table in Markdown. */
public final class EvidenceTable {
  private static final List<String> HEADER =
      List.of("id", "quantity", "published", "ours", "inside?", "source", "read");

  private EvidenceTable() {}

  /**
   * The table.
   *
   * @param results what came out
   * @return header and one row a finding, each line ended by a line feed
   */
  public static String markdown(List<CheckResult> results) {
    StringBuilder table = new StringBuilder();
    table.append(line(HEADER)).append(line(HEADER.stream().map(column -> "---").toList()));
    results.forEach(result -> table.append(line(cells(result))));
    return table.toString();
  }

  private static List<String> cells(CheckResult result) {
    PublishedCheck check = result.check();
    List<String> cells = new ArrayList<>();
    cells.add(check.id());
    cells.add(check.quantity());
    cells.add(withUnit(check));
    cells.add(result.ours());
    cells.add(verdict(result));
    cells.add(String.join(", ", check.sourceKeys()));
    cells.add(check.read());
    return cells;
  }

  private static String withUnit(PublishedCheck check) {
    String unit = check.unit();
    boolean unitTells =
        !unit.isEmpty() && !unit.equals("ratio") && !check.published().contains(unit);
    return unitTells ? check.published() + " (" + unit + ")" : check.published();
  }

  private static String verdict(CheckResult result) {
    String words = result.inside().words();
    if (result.inside() == Inside.YES && result.check().fitted()) {
      return words + " (fitted to it)";
    }
    return result.reason().isEmpty() ? words : words + ": " + result.reason();
  }

  private static String line(List<String> cells) {
    StringBuilder line = new StringBuilder("|");
    cells.forEach(cell -> line.append(' ').append(cell.replace("|", "\\|")).append(" |"));
    return line.append('\n').toString();
  }
}
