package org.undercap.cli.report;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.undercap.cli.output.Numbers;
import org.undercap.cli.output.TextPage;
import org.undercap.cli.output.TextTable;
import org.undercap.comparison.Comparison;
import org.undercap.ensemble.Outcome;
import org.undercap.ensemble.PlanResult;
import org.undercap.scenario.Scenario;
import org.undercap.treatment.Caution;
import org.undercap.treatment.CautionCatalogue;
import org.undercap.treatment.Method;
import org.undercap.treatment.PlanStep;

/** A comparison as a page of text for the terminal. */
public final class ComparisonPage {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);
  private static final double LOW = 0.1;
  private static final double MIDDLE = 0.5;
  private static final double HIGH = 0.9;
  private static final int FIGURES = 2;

  /** From this share of the runs on, one plan is said to harm fewer bees than another. */
  private static final double TOLD_APART = 0.55;

  private final Comparison comparison;
  private final Scenario scenario;

  /**
   * A page of a comparison.
   *
   * @param comparison the comparison
   */
  public ComparisonPage(Comparison comparison) {
    this.comparison = comparison;
    scenario = comparison.scenario();
  }

  /**
   * The page.
   *
   * @return its text
   */
  public String render() {
    TextPage page =
        new TextPage()
            .title(
                scenario.name() + ", from " + day(scenario.start()) + " to " + day(scenario.end()));
    if (scenario.study()) {
      page.paragraph("STUDY RUN, NOT ADVICE");
    }
    page.paragraph(answer());
    page.paragraph(
        "About "
            + Numbers.rounded(comparison.mites(), FIGURES)
            + " mites in the colony on the first day. Each figure below is the middle of "
            + comparison.settings().members()
            + " runs; in brackets the range of 8 in 10.");
    page.table(harm()).table(mitesTable());
    comparisonNotes(page);
    page.heading("Cautions");
    cautions(scenario).forEach(caution -> page.item(caution.title() + ": " + caution.text()));
    return page.render();
  }

  /**
   * The answer in a sentence or two.
   *
   * @return the sentence
   */
  public String answer() {
    int best = comparison.best();
    if (comparison.results().size() == 1) {
      return "This scenario has no plan but to do nothing.";
    }
    int second = comparison.ranking().get(1);
    String name = "\"" + comparison.results().get(best).plan().name() + "\"";
    String other = "\"" + comparison.results().get(second).plan().name() + "\"";
    double better = comparison.betterIn(best, second);
    if (better >= TOLD_APART) {
      return name
          + " protects the winter bees best. It harms fewer winter bees than "
          + other
          + " in "
          + ofTen(better)
          + " of 10 runs.";
    }
    boolean fewer = mitesLeft(best) < mitesLeft(second);
    return name
        + " comes first. It protects the winter bees no better than "
        + other
        + (fewer ? ", but leaves fewer mites." : ".");
  }

  /** Never says "10 of 10" of what does not hold in every run. */
  private static String ofTen(double share) {
    long rounded = Math.round(10 * share);
    return rounded == 10 && share < 1 ? "more than 9" : Long.toString(rounded);
  }

  private double mitesLeft(int plan) {
    return comparison.results().get(plan).outcomes().median(Outcome.MITES_AT_END);
  }

  private TextTable harm() {
    TextTable table =
        new TextTable()
            .text("plan, best first")
            .number(
                comparison.dates().lateBrood()
                    ? "parasitised\nlate brood"
                    : "parasitised\nwinter brood");
    if (comparison.tells(Outcome.WEAKENED_AT_MIDWINTER)) {
      table.number("weakened\nwinter bees");
    }
    if (comparison.tells(Outcome.BEES_AFTER_WINTER)) {
      table.number("bees after\nwinter");
    }
    for (int plan : comparison.ranking()) {
      PlanResult result = comparison.results().get(plan);
      List<String> cells =
          new ArrayList<>(
              List.of(result.plan().name(), percent(result, Outcome.WINTER_BROOD_PARASITISED)));
      if (comparison.tells(Outcome.WEAKENED_AT_MIDWINTER)) {
        cells.add(percent(result, Outcome.WEAKENED_AT_MIDWINTER));
      }
      if (comparison.tells(Outcome.BEES_AFTER_WINTER)) {
        cells.add(number(result, Outcome.BEES_AFTER_WINTER));
      }
      table.row(cells.toArray(String[]::new));
    }
    return table;
  }

  private TextTable mitesTable() {
    Map<Outcome, String> columns = new LinkedHashMap<>();
    List<Outcome> counts =
        List.of(
            Outcome.MITES_PER_100_FIRST, Outcome.MITES_PER_100_SECOND, Outcome.MITES_PER_100_LAST);
    List<LocalDate> dates = comparison.dates().countDates();
    for (int i = 0; i < dates.size(); i++) {
      columns.put(counts.get(i), "per 100\n" + shortDay(dates.get(i)));
    }
    if (comparison.tells(Outcome.MITES_AT_MIDWINTER)) {
      columns.put(Outcome.MITES_AT_MIDWINTER, "all mites\nmidwinter");
    }
    TextTable table = new TextTable().text("mites");
    columns.values().forEach(table::number);
    for (int plan : comparison.ranking()) {
      PlanResult result = comparison.results().get(plan);
      List<String> cells = new ArrayList<>(List.of(result.plan().name()));
      columns.keySet().forEach(outcome -> cells.add(number(result, outcome)));
      table.row(cells.toArray(String[]::new));
    }
    return table;
  }

  private void comparisonNotes(TextPage page) {
    page.paragraph(
        "Winter bees: those that emerge from "
            + day(comparison.dates().winterBeesFrom())
            + " to "
            + day(comparison.dates().winterBeesUntil())
            + ". \"Per 100\" is mites on 100 adult bees, a little more than a wash finds.");
    for (int plan : comparison.ranking()) {
      PlanResult result = comparison.results().get(plan);
      double lost = result.outcomes().mean(Outcome.LOST);
      if (lost >= 0.05) {
        page.item(
            result.plan().name()
                + ": the colony is lost in "
                + Math.round(10 * lost)
                + " of 10 runs");
      }
    }
  }

  /**
   * The cautions of the methods of all plans.
   *
   * @param scenario the scenario
   * @return each caution once
   */
  public static List<Caution> cautions(Scenario scenario) {
    List<Method> methods =
        scenario.plans().stream()
            .flatMap(plan -> plan.steps().stream())
            .filter(step -> step instanceof PlanStep.Application)
            .map(step -> ((PlanStep.Application) step).method())
            .distinct()
            .toList();
    List<Caution> cautions = new ArrayList<>(CautionCatalogue.shipped().of(methods));
    if (scenario.hive().supersOn()) {
      cautions.add(CautionCatalogue.shipped().get("supers"));
    }
    if (scenario.study()) {
      cautions.add(CautionCatalogue.shipped().get("study"));
    }
    return cautions;
  }

  private static String percent(PlanResult result, Outcome outcome) {
    double[] q = result.outcomes().quantiles(outcome, LOW, MIDDLE, HIGH);
    return plain(100 * q[1]) + " % (" + plain(100 * q[0]) + "-" + plain(100 * q[2]) + ")";
  }

  private static String number(PlanResult result, Outcome outcome) {
    double[] q = result.outcomes().quantiles(outcome, LOW, MIDDLE, HIGH);
    return plain(q[1]) + " (" + plain(q[0]) + "-" + plain(q[2]) + ")";
  }

  private static String plain(double value) {
    return value < 0.1
        ? "0"
        : value < 10 ? Numbers.fixed(value, 1) : Numbers.rounded(value, FIGURES);
  }

  private static String day(LocalDate date) {
    return DAY.format(date);
  }

  private static String shortDay(LocalDate date) {
    return DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH).format(date);
  }
}
