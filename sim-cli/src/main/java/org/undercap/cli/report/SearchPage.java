package org.undercap.cli.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.undercap.cli.output.Numbers;
import org.undercap.cli.output.TextPage;
import org.undercap.cli.output.TextTable;
import org.undercap.comparison.Ranking;
import org.undercap.planning.PlanSearch;
import org.undercap.planning.SearchRound;
import org.undercap.planning.TriedSchedule;
import org.undercap.scenario.Scenario;

/** Good schedules as a page of text for the terminal. */
public final class SearchPage {
  /** More rows than anyone would read; all are in the files. */
  private static final int MOST_ROWS = 15;

  private final PlanSearch.Result result;
  private final Scenario scenario;

  /**
   * A page about schedules.
   *
   * @param result what a search found
   */
  public SearchPage(PlanSearch.Result result) {
    this.result = result;
    scenario = result.scope().scenario();
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
                scenario.name()
                    + ": good schedules, from "
                    + DateWords.day(result.settings().from().orElse(scenario.start())));
    if (scenario.study()) {
      page.paragraph(Report.STUDY.toUpperCase(Locale.ROOT));
    }
    page.paragraph(answer());
    if (!result.front().isEmpty()) {
      page.paragraph(
          "Each schedule below is the best of those tried in some way: no other one tried is better"
              + " at once in winter bees harmed, mites left, "
              + (result.withoutCost().isEmpty() ? "cost and minutes" : "and minutes")
              + ". Figures are the middle of "
              + result.settings().ensemble().members()
              + " simulated seasons; in brackets the range of 8 in 10. "
              + HarmWords.MEANING);
      page.table(table());
      if (result.front().size() > MOST_ROWS) {
        page.paragraph(
            (result.front().size() - MOST_ROWS)
                + " more, which harm more, are in the files of --out and in --json.");
      }
    }
    page.heading("How it was searched");
    for (int i = 0; i < result.rounds().size(); i++) {
      page.item(words(result.rounds().get(i), i == 0));
    }
    page.item(
        "Kept to: your list and organic schemes if you named them, temperatures, honey supers, no"
            + " two treatments at once, the usual number of courses of each method, and at most two"
            + " courses of one class of substances (assumption). Dates lie a week apart. Measures"
            + " without a substance, such as caging the queen, were not tried.");
    if (!result.withoutCost().isEmpty()) {
      page.item(
          "Cost was not weighed: costs in the scenario file says nothing about "
              + String.join(", ", result.withoutCost())
              + ".");
    }
    page.item(
        "The best of many is partly the luckiest: expect a little less than it promises. Hold the"
            + " ones you like against each other with undercap compare.");
    page.heading("Cautions");
    Cautions.of(scenario, PlanningJson.plans(result))
        .forEach(caution -> page.item(caution.title() + ": " + caution.text()));
    return page.render();
  }

  /**
   * The answer in a sentence or two.
   *
   * @return the sentence
   */
  String answer() {
    if (result.front().isEmpty()) {
      return "Nothing that may be proposed here: every treatment is ruled out on every date.";
    }
    TriedSchedule best = result.front().get(0);
    double gain = result.untreated().median(Ranking.HARM) - best.outcomes().median(Ranking.HARM);
    if (gain < Ranking.STEP) {
      return "No schedule that was tried helps the winter bees by more than anyone could see. See"
          + " below for the mites left.";
    }
    return "Least harm to the winter bees: "
        + best.schedule().plan().name()
        + ". Winter bees harmed: "
        + Figures.percent(best.outcomes(), Ranking.HARM)
        + "; without treatment "
        + Figures.percent(result.untreated(), Ranking.HARM)
        + "."
        + simpler(best);
  }

  /** The one with the least work among those whose harm no one could tell from the best. */
  private String simpler(TriedSchedule best) {
    double most = best.outcomes().median(Ranking.HARM) + Ranking.STEP;
    return result.front().stream()
        .filter(tried -> tried.outcomes().median(Ranking.HARM) <= most)
        .min(Comparator.comparingDouble(tried -> tried.schedule().minutes()))
        .filter(tried -> tried.schedule().minutes() < best.schedule().minutes())
        .map(
            tried ->
                " Nearly the same for the winter bees with less work: "
                    + tried.schedule().plan().name()
                    + "; it leaves "
                    + Figures.number(tried.outcomes(), result.scope().mitesLeft())
                    + " mites on "
                    + DateWords.brief(result.scope().mitesLeftOn())
                    + ", against "
                    + Figures.number(best.outcomes(), result.scope().mitesLeft())
                    + ".")
        .orElse("");
  }

  private TextTable table() {
    boolean money = result.withoutCost().isEmpty();
    TextTable table =
        new TextTable()
            .text("schedule")
            .number("winter bees\nharmed")
            .number("mites left\n" + DateWords.brief(result.scope().mitesLeftOn()));
    if (money) {
      table.number("cost");
    }
    table.number("min-\nutes");
    for (TriedSchedule tried :
        result.front().subList(0, Math.min(MOST_ROWS, result.front().size()))) {
      List<String> cells =
          new ArrayList<>(
              List.of(
                  tried.schedule().plan().name(),
                  Figures.percent(tried.outcomes(), Ranking.HARM),
                  Figures.number(tried.outcomes(), result.scope().mitesLeft())));
      if (money) {
        cells.add(Numbers.rounded(tried.cost().orElseThrow(), 2));
      }
      cells.add(Numbers.rounded(tried.schedule().minutes(), 2));
      table.row(cells.toArray(String[]::new));
    }
    return table;
  }

  private static String words(SearchRound round, boolean first) {
    return round.what()
        + ": "
        + round.schedules()
        + (round.schedules() == 1 ? " schedule" : " schedules")
        + ", each on "
        + round.members()
        + (round.members() == 1 ? " simulated season" : " simulated seasons")
        + (round.complete()
            ? ""
            : first
                ? "; not all there are, but evenly spread over methods and dates"
                : "; not all there are, only those that build on the best so far");
  }
}
