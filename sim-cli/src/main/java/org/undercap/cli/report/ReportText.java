package org.undercap.cli.report;

import java.util.List;
import java.util.Locale;
import org.undercap.cli.output.TextPage;
import org.undercap.cli.output.TextTable;
import org.undercap.cli.report.Report.Block;
import org.undercap.cli.report.Report.Column;
import org.undercap.cli.report.Report.Grid;
import org.undercap.cli.report.Report.Items;
import org.undercap.cli.report.Report.Paragraph;
import org.undercap.cli.report.Report.Section;
import org.undercap.cli.report.Report.Subheading;
import org.undercap.cli.report.Report.Term;
import org.undercap.cli.report.Report.Terms;

/** A report as text for a terminal. Charts are left out. */
public final class ReportText {
  private final TextPage page = new TextPage();

  private ReportText() {}

  /**
   * The report as text.
   *
   * @param report the report
   * @return lines of 80 characters
   */
  public static String of(Report report) {
    return new ReportText().render(report);
  }

  private String render(Report report) {
    page.title(report.title() + (report.subtitle().isEmpty() ? "" : ", " + report.subtitle()));
    report.stamp().ifPresent(stamp -> page.paragraph(stamp.toUpperCase(Locale.ROOT)));
    for (Section section : report.sections()) {
      page.heading(section.heading().toUpperCase(Locale.ROOT));
      section.blocks().forEach(this::add);
    }
    return page.render();
  }

  private void add(Block block) {
    if (block instanceof Subheading subheading) {
      page.heading(subheading.text());
    } else if (block instanceof Paragraph paragraph) {
      page.paragraph(paragraph.text());
    } else if (block instanceof Items items) {
      items.items().forEach(page::item);
    } else if (block instanceof Terms terms) {
      terms.terms().forEach(this::add);
    } else if (block instanceof Grid grid) {
      page.table(table(grid));
    }
  }

  private void add(Term term) {
    page.item(term.name() + ": " + term.text());
  }

  private static TextTable table(Grid grid) {
    TextTable table = new TextTable();
    for (Column column : grid.columns()) {
      if (column.numeric()) {
        table.numbers(column.heading());
      } else {
        table.text(column.heading());
      }
    }
    for (List<String> row : grid.rows()) {
      table.row(row.toArray(String[]::new));
    }
    return table;
  }
}
