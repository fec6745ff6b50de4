package org.undercap.cli.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.undercap.cli.report.Report.Block;
import org.undercap.cli.report.Report.Items;
import org.undercap.cli.report.Report.Paragraph;
import org.undercap.cli.report.Report.Picture;
import org.undercap.cli.report.Report.Section;
import org.undercap.cli.report.Report.Subheading;
import org.undercap.cli.report.Report.Term;
import org.undercap.cli.report.Report.Terms;
import org.undercap.scenario.Scenario;
import org.undercap.treatment.Caution;

/**
 * The answer page in words, and the order in which they are read: answer, how sure, cautions, dates
 * and reason, which fit on one page of paper; then plans, what would change the advice, what it
 * rests on, its limits, and a glossary.
 */
public final class AnswerWords {
  /** Name of the chart beside the reason. */
  static final String REASON_CHART = "infestation";

  /** Name of the chart of all plans. */
  static final String PLANS_CHART = "plans";

  private final Answer answer;
  private final Scenario scenario;
  private final FrontWords front;

  private AnswerWords(Answer answer) {
    this.answer = answer;
    scenario = answer.scenario();
    front = new FrontWords(answer);
  }

  /**
   * The whole report.
   *
   * @param answer what to tell
   * @return the report
   */
  public static Report report(Answer answer) {
    return new AnswerWords(answer).report();
  }

  /**
   * The answer in one or two sentences.
   *
   * @param answer what to tell
   * @return the sentences
   */
  public static String headline(Answer answer) {
    return new FrontWords(answer).headline();
  }

  private Report report() {
    return new Report(
        scenario.name(),
        DateWords.day(scenario.start()) + " to " + DateWords.day(scenario.end()),
        scenario.study() ? Optional.of(Report.STUDY) : Optional.empty(),
        List.of(
            section("answer", "The answer", theAnswer()),
            section("sure", "How sure", new Items(new SureWords(answer).items())),
            section("cautions", "Cautions", new Terms(Cautions.terms(cautions()))),
            section("dates", "What to do when", dates()),
            reason()),
        List.of(
            plans(),
            section("change", "What would change this advice", ChangeWords.blocks(answer)),
            section("surveys", "What surveys found", RiskWords.blocks(answer)),
            section("basis", "What this rests on", BasisWords.blocks(answer)),
            section("limits", "What the model cannot tell", List.of(new Items(Glossary.LIMITS))),
            section("words", "Words", List.of(new Terms(Glossary.TERMS)))));
  }

  private List<Block> theAnswer() {
    List<Block> blocks = new ArrayList<>(List.of(new Paragraph(front.headline())));
    if (!front.warnings().isEmpty()) {
      blocks.add(new Paragraph(String.join(" ", front.warnings())));
    }
    return blocks;
  }

  private static Section section(String id, String heading, Block... blocks) {
    return section(id, heading, List.of(blocks));
  }

  private static Section section(String id, String heading, List<? extends Block> blocks) {
    return new Section(id, heading, List.copyOf(blocks));
  }

  private List<Caution> cautions() {
    return Cautions.of(scenario, List.of(answer.advice().chosenPlan()));
  }

  private Block dates() {
    List<PlanDate> dates = answer.dates();
    if (dates.isEmpty()) {
      return new Paragraph("There is nothing to do under this plan. Go on counting mites.");
    }
    Map<LocalDate, String> byDay = new LinkedHashMap<>();
    dates.forEach(
        date -> byDay.merge(date.date(), date.words() + ".", (first, next) -> first + " " + next));
    return new Terms(
        byDay.entrySet().stream()
            .map(day -> new Term(DateWords.day(day.getKey()), day.getValue()))
            .toList());
  }

  private Section reason() {
    return section(
        "reason",
        "Why",
        new Picture(REASON_CHART, ChartWords.alternative(ChartWords.infestation(answer))),
        new Paragraph(ReasonWords.of(answer)));
  }

  private Section plans() {
    List<Block> blocks = new ArrayList<>();
    String about = scenario.about().strip();
    if (!about.isEmpty()) {
      blocks.add(new Paragraph("The colony in the keeper's words: " + about));
    }
    blocks.addAll(new PlanTables(answer).blocks());
    blocks.add(new Picture(PLANS_CHART, ChartWords.alternative(ChartWords.plans(answer))));
    List<Caution> others =
        Cautions.of(scenario).stream().filter(c -> !cautions().contains(c)).toList();
    if (!others.isEmpty()) {
      blocks.add(new Subheading("Cautions for the other plans"));
      blocks.add(new Terms(Cautions.terms(others)));
    }
    return section("plans", "The plans", blocks);
  }
}
