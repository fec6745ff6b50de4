package org.undercap.cli.report;

import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.undercap.cli.output.OutputFiles;
import org.undercap.cli.output.OutputFolder;
import org.undercap.cli.output.TextPage;
import org.undercap.treatment.Caution;
import org.undercap.treatment.CautionCatalogue;

/** A page that lists several answers. */
public final class AnswerIndex {
  private static final String PAGE = "README.md";
  private final Map<String, Entry> byFolder = new LinkedHashMap<>();

  /** An index without entries. */
  public AnswerIndex() {}

  /**
   * Adds an answer.
   *
   * @param folder name of its folder
   * @param title name of the scenario
   * @param answer the answer in a sentence or two
   */
  public void add(String folder, String title, String answer) {
    byFolder.put(folder, new Entry(title, answer));
  }

  /**
   * The answers as text.
   *
   * @return an item for each, then the cautions that hold for all
   */
  public String text() {
    TextPage page = new TextPage();
    byFolder.forEach((folder, entry) -> page.item(folder + ": " + entry.answer()));
    page.heading("Cautions");
    for (String id : List.of("every-report", "every-treatment")) {
      Caution caution = CautionCatalogue.shipped().get(id);
      page.item(caution.title() + ": " + caution.text());
    }
    return page.paragraph("Each answer's own page holds the cautions of its treatments.").render();
  }

  /**
   * Looks early whether the page can be written.
   *
   * @param folder the folder in which the others lie
   * @throws org.undercap.cli.output.UsageException if the page is there and must stay
   */
  public static void check(OutputFolder folder) {
    folder.prepare(List.of(PAGE)).close();
  }

  /**
   * Writes the page.
   *
   * @param folder the folder in which the others lie
   * @param err told which file was written
   */
  public void write(OutputFolder folder, PrintWriter err) {
    StringBuilder page =
        new StringBuilder("# Answers\n\nEvery place and colony here is invented.\n\n");
    byFolder.forEach(
        (name, entry) ->
            page.append("- [")
                .append(ReportMarkdown.escape(entry.title()))
                .append("](")
                .append(name)
                .append('/')
                .append(AnswerFiles.MARKDOWN)
                .append("): ")
                .append(ReportMarkdown.escape(entry.answer()))
                .append('\n'));
    try (OutputFiles files = folder.prepare(List.of(PAGE))) {
      files.text(PAGE, writer -> writer.write(page.toString()));
      files.publish(err);
    }
  }

  private record Entry(String title, String answer) {}
}
