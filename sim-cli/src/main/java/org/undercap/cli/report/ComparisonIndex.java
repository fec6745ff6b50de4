package org.undercap.cli.report;

import java.io.PrintWriter;
import java.util.List;
import java.util.Map;
import org.undercap.advice.Refusal;
import org.undercap.cli.output.OutputFiles;
import org.undercap.cli.output.OutputFolder;
import org.undercap.cli.output.TextPage;
import org.undercap.comparison.Comparison;
import org.undercap.treatment.CautionCatalogue;

/** A page that lists several comparisons with their answers. */
public final class ComparisonIndex {
  private static final String PAGE = "README.md";

  private ComparisonIndex() {}

  /**
   * Looks early, before the long run, whether the page can be written.
   *
   * @param folder the folder in which the others will lie
   * @throws org.undercap.cli.output.UsageException if the page is there and must stay
   */
  public static void check(OutputFolder folder) {
    folder.prepare(List.of(PAGE)).close();
  }

  /**
   * The answers as text, with the cautions of all comparisons.
   *
   * @param byFolder the comparisons by the names of their folders
   * @param refused the scenarios without advice by the names of their files
   * @return a page for the terminal
   */
  public static String text(Map<String, Comparison> byFolder, Map<String, Refusal> refused) {
    TextPage page = new TextPage();
    byFolder.forEach(
        (folder, comparison) -> page.item(folder + ": " + new ComparisonPage(comparison).answer()));
    refused.forEach((name, refusal) -> page.item(name + ": " + refusal.text()));
    page.heading("Cautions");
    byFolder.values().stream()
        .flatMap(comparison -> ComparisonPage.cautions(comparison.scenario()).stream())
        .distinct()
        .forEach(caution -> page.item(caution.title() + ": " + caution.text()));
    return page.render();
  }

  /**
   * Writes the page.
   *
   * @param byFolder the comparisons by the names of their folders
   * @param refused the scenarios without advice by the names of their files
   * @param folder the folder in which the others lie
   * @param err told which file was written
   */
  public static void write(
      Map<String, Comparison> byFolder,
      Map<String, Refusal> refused,
      OutputFolder folder,
      PrintWriter err) {
    StringBuilder page =
        new StringBuilder("# Comparisons\n\nEvery place and colony here is invented.\n\n");
    byFolder.forEach(
        (name, comparison) ->
            page.append("- [")
                .append(ComparisonMarkdown.escape(comparison.scenario().name()))
                .append("](")
                .append(name)
                .append("/comparison.md): ")
                .append(ComparisonMarkdown.escape(new ComparisonPage(comparison).answer()))
                .append('\n'));
    refused.forEach(
        (name, refusal) ->
            page.append("- ")
                .append(ComparisonMarkdown.escape(name + ": " + refusal.text()))
                .append('\n'));
    page.append('\n').append(CautionCatalogue.shipped().get("every-report").text()).append('\n');
    try (OutputFiles files = folder.prepare(List.of(PAGE))) {
      files.text(PAGE, writer -> writer.write(page.toString()));
      files.publish(err);
    }
  }
}
