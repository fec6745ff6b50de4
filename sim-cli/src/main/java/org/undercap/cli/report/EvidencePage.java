package org.undercap.cli.report;

import java.io.Writer;
import java.util.List;
import org.undercap.cli.output.JsonOutput;
import org.undercap.cli.output.TextPage;
import org.undercap.evidence.CheckResult;
import org.undercap.evidence.EvidenceTable;
import org.undercap.evidence.Inside;
import org.undercap.evidence.Measured;

/** How far the model agrees with published findings: for the terminal, in Markdown and as JSON. */
public final class EvidencePage {
  private static final int VERSION = 1;
  private final List<CheckResult> results;

  /**
   * A page of results.
   *
   * @param results what came out
   */
  public EvidencePage(List<CheckResult> results) {
    this.results = List.copyOf(results);
  }

  private List<CheckResult> with(Inside inside) {
    return results.stream().filter(result -> result.inside() == inside).toList();
  }

  /**
   * How many findings agree.
   *
   * @return a sentence
   */
  public String count() {
    long fitted = with(Inside.YES).stream().filter(result -> result.check().fitted()).count();
    return "Of "
        + results.size()
        + " published findings the model agrees with "
        + with(Inside.YES).size()
        + " ("
        + fitted
        + " of these were used to choose its values and prove little), misses "
        + with(Inside.NO).size()
        + ", and "
        + with(Inside.NOT_RUN).size()
        + " were not run.";
  }

  /**
   * The page for the terminal.
   *
   * @return its text
   */
  public String text() {
    TextPage page = new TextPage().title("The model against published findings").paragraph(count());
    for (CheckResult result : results) {
      page.heading(result.check().id() + ": " + verdict(result));
      page.fact("what", result.check().quantity());
      page.fact("published", result.check().published() + unit(result));
      page.fact("ours", result.ours());
      page.fact("why", result.reason());
      page.fact(
          "source",
          String.join(", ", result.check().sourceKeys()) + " (" + result.check().read() + ")");
    }
    return page.render();
  }

  private static String unit(CheckResult result) {
    return result.check().unit().isEmpty() ? "" : " " + result.check().unit();
  }

  private static String verdict(CheckResult result) {
    return switch (result.inside()) {
      case YES -> result.check().fitted() ? "agrees (used in tuning)" : "agrees";
      case NO -> "MISSES";
      case NOT_RUN -> "not run";
    };
  }

  /**
   * The misses in Markdown, with their reasons.
   *
   * @return the count and a table
   */
  public String misses() {
    return count() + "\n\n" + EvidenceTable.markdown(with(Inside.NO));
  }

  /**
   * All findings in Markdown.
   *
   * @return a page
   */
  public String markdown() {
    return "# The model against published findings\n\n"
        + count()
        + "\n\n"
        + EvidenceTable.markdown(results);
  }

  /**
   * All findings as JSON.
   *
   * @param writer where to write; not closed
   */
  public void json(Writer writer) {
    JsonOutput.write(
        writer,
        "evidence",
        VERSION,
        json -> json.list("findings", results, (entry, result) -> finding(entry, result)));
  }

  private static void finding(JsonOutput json, CheckResult result) {
    json.text("id", result.check().id())
        .text("group", result.check().group())
        .text("quantity", result.check().quantity())
        .text("published", result.check().published())
        .text("unit", result.check().unit())
        .text("inside", result.inside().words())
        .flag("usedInTuning", result.check().fitted())
        .text("ours", result.ours())
        .text("reason", result.reason())
        .texts("sources", result.check().sourceKeys())
        .text("read", result.check().read())
        .list("measured", result.measured(), EvidencePage::measured);
  }

  private static void measured(JsonOutput json, Measured measured) {
    json.text("what", measured.what())
        .number("value", measured.value())
        .text("unit", measured.unit());
  }
}
