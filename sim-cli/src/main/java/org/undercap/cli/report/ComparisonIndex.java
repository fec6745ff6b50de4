package org.undercap.cli.report;

import java.io.PrintWriter;
import java.util.List;
import java.util.Map;
import org.undercap.cli.output.OutputFiles;
import org.undercap.cli.output.OutputFolder;
import org.undercap.comparison.Comparison;

/** A page that lists several comparisons with their answers. */
public final class ComparisonIndex {
  private static final String PAGE = "README.md";

  private ComparisonIndex() {}

  /**
   * The answers as text.
   *
   * @param byFolder the comparisons by the names of their folders
   * @return two lines for each
   */
  public static String text(Map<String, Comparison> byFolder) {
    StringBuilder text = new StringBuilder();
    byFolder.forEach(
        (folder, comparison) ->
            text.append(folder)
                .append(":\n  ")
                .append(new ComparisonPage(comparison).answer())
                .append('\n'));
    return text.toString();
  }

  /**
   * Writes the page.
   *
   * @param byFolder the comparisons by the names of their folders
   * @param folder the folder in which the others lie
   * @param err told which file was written
   */
  public static void write(Map<String, Comparison> byFolder, OutputFolder folder, PrintWriter err) {
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
    try (OutputFiles files = folder.prepare(List.of(PAGE))) {
      files.text(PAGE, writer -> writer.write(page.toString()));
      files.publish(err);
    }
  }
}
