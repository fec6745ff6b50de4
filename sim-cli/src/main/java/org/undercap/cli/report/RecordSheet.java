package org.undercap.cli.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.undercap.treatment.PlanStep;

/**
 * A sheet on which a keeper enters the medicines that were used, as many laws want it. What is
 * planned is filled in; what only the keeper knows is left blank.
 *
 * @param title name of the colony or place
 * @param stamp what must stand on it, if anything
 * @param rows planned applications, then blank rows
 * @param note what to do with it
 */
public record RecordSheet(String title, Optional<String> stamp, List<Row> rows, String note) {
  private static final int ROWS = 8;
  private static final int LEAST_BLANK = 2;

  /**
   * Copies the list.
   *
   * @param title name of the colony or place
   * @param stamp what must stand on it, if anything
   * @param rows planned applications, then blank rows
   * @param note what to do with it
   */
  public RecordSheet {
    rows = List.copyOf(rows);
  }

  /**
   * One use of a medicine.
   *
   * @param planned planned day in words; empty if blank
   * @param substance active substance and way of use; empty if blank
   */
  public record Row(String planned, String substance) {}

  static RecordSheet of(Answer answer) {
    List<Row> rows = new ArrayList<>();
    answer.advice().chosenPlan().steps().stream()
        .filter(step -> step instanceof PlanStep.Application)
        .map(step -> (PlanStep.Application) step)
        .sorted(Comparator.comparing(PlanStep::date))
        .forEach(a -> rows.add(new Row(DateWords.day(a.date()), a.method().name())));
    int wanted = Math.max(ROWS, rows.size() + LEAST_BLANK);
    while (rows.size() < wanted) {
      rows.add(new Row("", ""));
    }
    return new RecordSheet(
        answer.scenario().name(),
        answer.scenario().study() ? Optional.of(Report.STUDY) : Optional.empty(),
        rows,
        "Planned days are those of the report; enter what was really done. Keep this sheet as long"
            + " as your law says. The label and the law come first.");
  }

  /** The sheet as a web page that prints on one page of paper. */
  String html() {
    return ReportHtml.render("record-sheet.jte", Map.of("sheet", this));
  }
}
