package org.undercap.evidence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Prints results as a table in Markdown. */
public final class EvidenceTable {
  private static final List<String> HEADER =
      List.of("id", "kind", "quantity", "published", "ours", "inside?", "source", "read");

  private static final Comparator<CheckResult> ORDER =
      Comparator.<CheckResult, PublishedCheck.Kind>comparing(result -> result.check().kind())
          .thenComparing(result -> result.check().fitted())
          .thenComparing(result -> result.inside() == Inside.YES);

  private EvidenceTable() {}

  /**
   * The table: findings about bees and mites that tuning never used, then those it used, then
   * formulas; misses first in each.
   *
   * @param results what came out
   * @return header and one row a finding, each line ended by a line feed
   */
  public static String markdown(List<CheckResult> results) {
    StringBuilder table = new StringBuilder();
    table.append(line(HEADER)).append(line(HEADER.stream().map(column -> "---").toList()));
    results.stream().sorted(ORDER).forEach(result -> table.append(line(cells(result))));
    return table.toString();
  }

  private static List<String> cells(CheckResult result) {
    PublishedCheck check = result.check();
    List<String> cells = new ArrayList<>();
    cells.add(check.id());
    cells.add(kind(check));
    cells.add(check.quantity());
    cells.add(withUnit(check));
    cells.add(result.ours());
    cells.add(verdict(result));
    cells.add(String.join(", ", check.sourceKeys()));
    cells.add(check.read());
    return cells;
  }

  /** Findings that the model was fitted to stand apart: agreement proves little there. */
  private static String kind(PublishedCheck check) {
    String used = check.kind() == PublishedCheck.Kind.BIOLOGY ? ", never used" : "";
    return check.kind().words() + (check.fitted() ? ", used in tuning" : used);
  }

  private static String withUnit(PublishedCheck check) {
    String unit = check.unit();
    boolean unitTells =
        !unit.isEmpty() && !unit.equals("ratio") && !check.published().contains(unit);
    return unitTells ? check.published() + " (" + unit + ")" : check.published();
  }

  private static String verdict(CheckResult result) {
    String words = result.inside().words();
    return result.reason().isEmpty() ? words : words + ": " + result.reason();
  }

  private static String line(List<String> cells) {
    StringBuilder line = new StringBuilder("|");
    cells.forEach(cell -> line.append(' ').append(cell.replace("|", "\\|")).append(" |"));
    return line.append('\n').toString();
  }
}
