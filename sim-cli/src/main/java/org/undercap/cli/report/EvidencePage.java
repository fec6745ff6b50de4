package org.undercap.cli.report;

import static org.undercap.evidence.PublishedCheck.Kind.BIOLOGY;
import static org.undercap.evidence.PublishedCheck.Kind.FORMULA;

import java.io.Writer;
import java.util.List;
import org.undercap.cli.output.JsonOutput;
import org.undercap.cli.output.TextPage;
import org.undercap.evidence.CheckResult;
import org.undercap.evidence.EvidenceTable;
import org.undercap.evidence.Inside;
import org.undercap.evidence.Measured;
import org.undercap.evidence.PublishedCheck;

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
   * How many findings agree: those about bees and mites apart from formulas, and those that values
   * were chosen by apart from those that were never used.
   *
   * @return some sentences
   */
  public String count() {
    long yes = count(BIOLOGY, Inside.YES);
    long tuned =
        results.stream()
            .filter(result -> result.check().kind() == BIOLOGY && result.inside() == Inside.YES)
            .filter(result -> result.check().fitted())
            .count();
    return "Of "
        + (yes + count(BIOLOGY, Inside.NO) + count(BIOLOGY, Inside.NOT_RUN))
        + " findings about bees and mites the model agrees with "
        + (yes - tuned)
        + " that were never used in tuning and with "
        + tuned
        + " that its values were chosen by (which proves little), and misses "
        + count(BIOLOGY, Inside.NO)
        + ". Of "
        + results.stream().filter(result -> result.check().kind() == FORMULA).count()
        + " formulas, examples and statistics "
        + count(FORMULA, Inside.YES)
        + " come out right, "
        + count(FORMULA, Inside.NO)
        + " wrong, and "
        + count(FORMULA, Inside.NOT_RUN)
        + " are not run.";
  }

  private long count(PublishedCheck.Kind kind, Inside inside) {
    return with(inside).stream().filter(result -> result.check().kind() == kind).count();
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
   * All findings in Markdown.
   *
   * @return a page
   */
  public String markdown() {
    return "# The model against published findings\n\n" + table();
  }

  /**
   * How many findings agree, and all of them, for a page in Markdown.
   *
   * @return a paragraph and a table
   */
  public String table() {
    return count() + "\n\n" + EvidenceTable.markdown(results);
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
        .text("kind", result.check().kind().words())
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
