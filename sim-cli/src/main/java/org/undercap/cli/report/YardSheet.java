package org.undercap.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.undercap.cli.report.Report.Block;
import org.undercap.cli.report.Report.Column;
import org.undercap.cli.report.Report.Section;
import org.undercap.planning.Yard;

/** The colonies of a yard as a web page to print. */
final class YardSheet {
  private final Yard yard;
  private final YardPage words;

  YardSheet(Yard yard) {
    this.yard = yard;
    words = new YardPage(yard);
  }

  String html() {
    List<Block> answer = new ArrayList<>(List.of(new Report.Paragraph(words.answer())));
    List<Section> front = new ArrayList<>(List.of(new Section("answer", "Answer", answer)));
    yard.together()
        .ifPresent(
            together ->
                front.add(
                    new Section(
                        "why",
                        "All colonies, or some",
                        List.of(new Report.Paragraph(words.reason(together))))));
    front.add(
        new Section(
            "cautions",
            "Cautions",
            List.of(
                new Report.Terms(
                    Cautions.of(yard.site()).stream()
                        .map(c -> new Report.Term(c.title(), c.text()))
                        .toList()))));
    List<Section> details = new ArrayList<>(List.of(colonies()));
    if (!yard.plans().isEmpty()) {
      details.add(plans());
    }
    Report report =
        new Report(
            words.title(),
            "Mites in a yard",
            yard.site().study() ? Optional.of(Report.STUDY) : Optional.empty(),
            front,
            details);
    return ReportHtml.of(report, Map.of());
  }

  private Section colonies() {
    return new Section(
        "colonies",
        "Colonies, the most worrying first",
        List.of(
            new Report.Grid(
                "Mites in each colony",
                List.of(
                    Column.words("colony"),
                    Column.numbers("mites per 100 bees"),
                    Column.numbers("all mites"),
                    Column.words("look at"),
                    Column.words("note")),
                words.colonyRows()),
            new Report.Paragraph(YardPage.COLONIES_NOTE)));
  }

  private Section plans() {
    return new Section(
        "plans",
        "One plan for all counted colonies",
        List.of(
            new Report.Grid(
                "Plans, the best first",
                List.of(
                    Column.words("plan"),
                    Column.numbers("winter bees harmed"),
                    Column.numbers("mites left"),
                    Column.numbers("best for"),
                    Column.words("")),
                words.planRows()),
            new Report.Paragraph(words.plansNote())));
  }
}
