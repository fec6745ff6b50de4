package org.undercap.cli.report;

import java.util.List;
import java.util.Optional;
import org.undercap.advice.Refusal;
import org.undercap.cli.report.Report.Items;
import org.undercap.cli.report.Report.Paragraph;
import org.undercap.cli.report.Report.Section;
import org.undercap.cli.report.Report.Terms;
import org.undercap.scenario.Scenario;

/** What is said instead of an answer outside the range in which the model was tested. */
public final class RefusalWords {
  private RefusalWords() {}

  /**
   * The report of a refusal: the reason and cautions, no figures.
   *
   * @param scenario the scenario
   * @param refusal why there is no advice
   * @return the report
   */
  public static Report report(Scenario scenario, Refusal refusal) {
    return new Report(
        scenario.name(),
        "",
        scenario.study() ? Optional.of(Report.STUDY) : Optional.empty(),
        List.of(
            new Section("refusal", "No advice", List.of(new Paragraph(refusal.text()))),
            new Section(
                "instead",
                "What to do instead",
                List.of(
                    new Items(
                        List.of(
                            "Ask an adviser or the bee inspector who knows colonies like this one.",
                            "Change what was written down only if it was wrong. A figure for another kind of colony would not hold for this one.")))),
            new Section(
                "cautions", "Cautions", List.of(new Terms(Cautions.terms(Cautions.ofRefusal()))))),
        List.of());
  }
}
