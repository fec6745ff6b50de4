package org.undercap.cli.report;

import java.io.PrintWriter;
import java.util.List;
import org.undercap.cli.output.OutputFiles;
import org.undercap.cli.output.OutputFolder;
import org.undercap.planning.PlanSearch;

/** The files about schedules: a table, one JSON document and the page as text. */
public final class SearchFiles {
  private static final String CSV = "schedules.csv";
  private static final String JSON = "plan.json";
  private static final String PAGE = "plan.txt";

  private SearchFiles() {}

  /**
   * Looks early, before the long run, whether the files can be written.
   *
   * @param folder where they will be written
   * @throws org.undercap.cli.output.UsageException if files are there that must stay
   */
  public static void check(OutputFolder folder) {
    folder.prepare(List.of(CSV, JSON, PAGE)).close();
  }

  /**
   * Writes all files, or none.
   *
   * @param result what a search found
   * @param folder where to write
   * @param err told which files were written
   */
  public static void write(PlanSearch.Result result, OutputFolder folder, PrintWriter err) {
    try (OutputFiles files = folder.prepare(List.of(CSV, JSON, PAGE))) {
      files.text(CSV, writer -> SearchCsv.write(writer, result));
      files.text(JSON, writer -> PlanningJson.search(writer, result));
      files.text(PAGE, writer -> writer.write(new SearchPage(result).render()));
      files.publish(err);
    }
  }
}
