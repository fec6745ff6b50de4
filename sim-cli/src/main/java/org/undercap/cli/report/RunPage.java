package org.undercap.cli.report;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.undercap.cli.output.Numbers;
import org.undercap.cli.output.TextPage;
import org.undercap.cli.output.TextTable;
import org.undercap.comparison.CentralRun;
import org.undercap.scenario.Scenario;
import org.undercap.simulation.DailyColumn;
import org.undercap.simulation.DailyTable;

/** Single runs as a page of text for the terminal. */
public final class RunPage {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);
  private static final int FIGURES = 2;

  private RunPage() {}

  /**
   * The page: for each plan the colony on the first day, on the first of each month and on the last
   * day.
   *
   * @param scenario the scenario
   * @param runs the runs
   * @return its text
   */
  public static String of(Scenario scenario, List<CentralRun> runs) {
    TextPage page =
        new TextPage()
            .title(
                scenario.name()
                    + ", from "
                    + DAY.format(scenario.start())
                    + " to "
                    + DAY.format(scenario.end()));
    if (scenario.study()) {
      page.paragraph(Report.STUDY.toUpperCase(Locale.ROOT));
    }
    for (CentralRun run : runs) {
      page.heading(run.plan().name());
      page.table(table(run.table()));
      if (run.table().lost()) {
        LocalDate day = run.table().start().plusDays(run.table().days() - 1L);
        page.paragraph(
            "The colony is lost on " + DAY.format(day) + ": too few bees are left to go on.");
      }
    }
    page.paragraph(
        "A typical season of an average colony; compare shows how far real colonies may scatter around it.");
    page.heading("Cautions");
    Cautions.of(scenario).forEach(caution -> page.item(caution.title() + ": " + caution.text()));
    return page.render();
  }

  private static TextTable table(DailyTable run) {
    TextTable table =
        new TextTable()
            .name("day")
            .number("bees")
            .number("brood\n(cells)")
            .number("mites\non bees")
            .number("mites under\nthe cappings")
            .number("mites on\n100 bees")
            .number("mite fall\na day");
    for (int day = 0; day < run.days(); day++) {
      LocalDate date = run.start().plusDays(day);
      if (day == 0 || day == run.days() - 1 || date.getDayOfMonth() == 1) {
        table.row(
            DAY.format(date),
            whole(run.adults(day)),
            whole(run.brood(day)),
            whole(run.at(DailyColumn.MITES_ON_BEES, day)),
            whole(run.mitesInCells(day)),
            fine(run.mitesPer100Bees(day)),
            fine(run.miteFall(day)));
      }
    }
    return table;
  }

  private static String fine(double value) {
    return value < 10 ? Numbers.fixed(value, 1) : Numbers.rounded(value, FIGURES);
  }

  private static String whole(double value) {
    return value < 0.5 ? "0" : Numbers.rounded(value, value < 10 ? 1 : FIGURES);
  }
}
