package org.undercap.cli.report;

import java.io.PrintWriter;
import java.io.Writer;
import java.util.List;
import java.util.Map;
import org.undercap.advice.Refusal;
import org.undercap.cli.output.JsonOutput;
import org.undercap.cli.output.OutputFiles;
import org.undercap.cli.output.OutputFolder;
import org.undercap.scenario.Scenario;

/** The files of a refusal: the same pages as those of an answer, with the reason only. */
public final class RefusalFiles {
  private static final int VERSION = 1;

  private RefusalFiles() {}

  /**
   * Writes the pages.
   *
   * @param scenario the scenario
   * @param refusal why there is no advice
   * @param folder where to write
   * @param err told which files were written
   */
  public static void write(
      Scenario scenario, Refusal refusal, OutputFolder folder, PrintWriter err) {
    Report report = RefusalWords.report(scenario, refusal);
    try (OutputFiles files = folder.prepare(List.of(AnswerFiles.PAGE, AnswerFiles.MARKDOWN))) {
      files.text(AnswerFiles.PAGE, out -> out.write(ReportHtml.of(report, Map.of())));
      files.text(AnswerFiles.MARKDOWN, out -> out.write(ReportMarkdown.of(report, List.of())));
      files.publish(err);
    }
  }

  /**
   * Writes a refusal as a JSON document.
   *
   * @param writer where to write; not closed
   * @param scenario the scenario
   * @param refusal why there is no advice
   */
  public static void json(Writer writer, Scenario scenario, Refusal refusal) {
    JsonOutput.write(
        writer,
        "refusal",
        VERSION,
        json ->
            json.text("scenario", scenario.name())
                .flag("study", scenario.study())
                .text("answer", refusal.text())
                .texts("notTestedFor", refusal.missing()));
  }
}
