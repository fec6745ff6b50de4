package org.undercap.cli.report;

import java.util.List;
import org.undercap.comparison.Comparison;
import org.undercap.scenario.Assumption;
import org.undercap.scenario.Scenario;

/** A comparison as a page in Markdown that shows the charts beside it. */
final class ComparisonMarkdown {
  private ComparisonMarkdown() {}

  static String of(Comparison comparison, List<String> charts) {
    Scenario scenario = comparison.scenario();
    StringBuilder page = new StringBuilder("# " + escape(scenario.name()) + "\n\n");
    if (!scenario.about().isBlank()) {
      page.append(escape(scenario.about().strip())).append("\n\n");
    }
    for (String chart : charts) {
      if (chart.endsWith(".png")) {
        page.append("![")
            .append(escape(alternative(chart, comparison)))
            .append("](")
            .append(chart)
            .append(")\n\n");
      }
    }
    page.append("```text\n")
        .append(new ComparisonPage(comparison).render())
        .append("```\n\n## What was assumed\n\n");
    for (Assumption assumption : scenario.assumptions()) {
      page.append("- `")
          .append(assumption.field())
          .append("`: ")
          .append(escape(assumption.text()))
          .append('\n');
    }
    page.append(
        "\nThe numbers behind this page: [outcomes.csv](outcomes.csv), [curves.csv](curves.csv),"
            + " [comparison.json](comparison.json).\n");
    return page.toString();
  }

  private static String alternative(String chart, Comparison comparison) {
    String what =
        chart.startsWith("plans")
            ? "Mites on bees and in sealed brood under each plan. "
            : "Mites on 100 bees under each plan. ";
    return what + new ComparisonPage(comparison).answer();
  }

  /** Text of a user must not become markup. */
  static String escape(String text) {
    return text.replaceAll("([\\\\`*_\\[\\]<>#|])", "\\\\$1").replaceAll("\\s+", " ");
  }
}
