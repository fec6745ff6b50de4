package org.undercap.cli.report;

import java.io.PrintWriter;
import java.util.List;
import org.undercap.cli.output.OutputFiles;
import org.undercap.cli.output.OutputFolder;
import org.undercap.planning.Yard;

/**
 * The files about a yard: two tables, one JSON document, the page as text and as a web page to
 * print.
 */
public final class YardFiles {
  private static final String COLONIES = "colonies.csv";
  private static final String PLANS = "plans.csv";
  private static final String JSON = "apiary.json";
  private static final String PAGE = "apiary.txt";
  private static final String SHEET = "apiary.html";
  private static final List<String> ALL = List.of(COLONIES, PLANS, JSON, PAGE, SHEET);

  private YardFiles() {}

  /**
   * Looks early, before the long run, whether the files can be written.
   *
   * @param folder where they will be written
   * @throws org.undercap.cli.output.UsageException if files are there that must stay
   */
  public static void check(OutputFolder folder) {
    folder.prepare(ALL).close();
  }

  /**
   * Writes all files, or none.
   *
   * @param yard the yard
   * @param folder where to write
   * @param err told which files were written
   */
  public static void write(Yard yard, OutputFolder folder, PrintWriter err) {
    try (OutputFiles files = folder.prepare(ALL)) {
      files.text(COLONIES, writer -> YardCsv.colonies(writer, yard));
      files.text(PLANS, writer -> YardCsv.plans(writer, yard));
      files.text(JSON, writer -> PlanningJson.yard(writer, yard));
      files.text(PAGE, writer -> writer.write(new YardPage(yard).render()));
      files.text(SHEET, writer -> writer.write(new YardSheet(yard).html()));
      files.publish(err);
    }
  }
}
