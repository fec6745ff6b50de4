package org.undercap.cli.report;

import java.util.List;
import java.util.stream.Collectors;
import org.undercap.cli.report.Report.Block;
import org.undercap.cli.report.Report.Column;
import org.undercap.cli.report.Report.Grid;
import org.undercap.cli.report.Report.Items;
import org.undercap.cli.report.Report.Paragraph;
import org.undercap.cli.report.Report.Picture;
import org.undercap.cli.report.Report.Section;
import org.undercap.cli.report.Report.Subheading;
import org.undercap.cli.report.Report.Terms;

/** A report as a page in Markdown with the charts that lie beside it. */
final class ReportMarkdown {
  private final StringBuilder page = new StringBuilder();
  private final List<String> files;

  private ReportMarkdown(List<String> files) {
    this.files = files;
  }

  /**
   * The report in Markdown.
   *
   * @param report the report
   * @param files names of the files beside it; those of its charts are shown
   */
  static String of(Report report, List<String> files) {
    return new ReportMarkdown(files).render(report);
  }

  private String render(Report report) {
    page.append("# ").append(escape(report.title())).append("\n\n");
    if (!report.subtitle().isEmpty()) {
      paragraph(report.subtitle());
    }
    report.stamp().ifPresent(stamp -> page.append("**").append(stamp).append("**\n\n"));
    for (Section section : report.sections()) {
      page.append("## ").append(escape(section.heading())).append("\n\n");
      section.blocks().forEach(this::add);
    }
    return page.toString().stripTrailing() + "\n";
  }

  private void add(Block block) {
    if (block instanceof Subheading subheading) {
      page.append("### ").append(escape(subheading.text())).append("\n\n");
    } else if (block instanceof Paragraph paragraph) {
      paragraph(paragraph.text());
    } else if (block instanceof Items items) {
      items.items().forEach(item -> page.append("- ").append(escape(item)).append('\n'));
      page.append('\n');
    } else if (block instanceof Terms terms) {
      terms
          .terms()
          .forEach(
              term ->
                  page.append("- **")
                      .append(escape(term.name()))
                      .append("**: ")
                      .append(escape(term.text()))
                      .append('\n'));
      page.append('\n');
    } else if (block instanceof Grid grid) {
      table(grid);
    } else if (block instanceof Picture picture) {
      pictures(picture);
    }
  }

  private void paragraph(String text) {
    page.append(escape(text)).append("\n\n");
  }

  private void table(Grid grid) {
    row(grid.columns().stream().map(Column::heading).toList());
    page.append(
        grid.columns().stream()
            .map(column -> column.numeric() ? "---:" : "---")
            .collect(Collectors.joining(" | ", "| ", " |\n")));
    grid.rows().forEach(this::row);
    page.append('\n');
  }

  private void row(List<String> cells) {
    page.append(
        cells.stream()
            .map(ReportMarkdown::escape)
            .collect(Collectors.joining(" | ", "| ", " |\n")));
  }

  /** All pages of a chart. */
  private void pictures(Picture picture) {
    for (String file : files) {
      if (file.matches(picture.name() + "(-\\d+)?\\.png")) {
        page.append("![")
            .append(escape(picture.alternative()))
            .append("](")
            .append(file)
            .append(")\n\n");
      }
    }
  }

  /** Text of a user must not become markup. */
  static String escape(String text) {
    return text.replaceAll("([\\\\`*_\\[\\]<>#|~!&])", "\\\\$1").replaceAll("\\s+", " ").strip();
  }
}
