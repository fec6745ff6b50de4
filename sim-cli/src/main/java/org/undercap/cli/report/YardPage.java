package org.undercap.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.undercap.cli.output.TextPage;
import org.undercap.cli.output.TextTable;
import org.undercap.monitoring.EstimateWarning;
import org.undercap.monitoring.Interval;
import org.undercap.monitoring.MiteDistribution;
import org.undercap.monitoring.MiteEstimate;
import org.undercap.planning.Together;
import org.undercap.planning.Yard;
import org.undercap.planning.YardColony;
import org.undercap.planning.YardPlan;
import org.undercap.scenario.Scenario;

/** The colonies of a yard as a page of text for the terminal. */
public final class YardPage {
  /** Stands below the table of colonies. */
  static final String COLONIES_NOTE =
      "Estimates from the counts; in brackets the range of 8 in 10; \">\" where more mites would have"
          + " given the same count. Sorted by the upper end of the mites per 100 bees, then by all"
          + " mites.";

  private final Yard yard;
  private final Scenario site;

  /**
   * A page about a yard.
   *
   * @param yard the yard
   */
  public YardPage(Yard yard) {
    this.yard = yard;
    site = yard.site();
  }

  /**
   * The page.
   *
   * @return its text
   */
  public String render() {
    TextPage page = new TextPage().title(title());
    if (site.study()) {
      page.paragraph("STUDY RUN, NOT ADVICE");
    }
    page.paragraph(answer());
    yard.together().ifPresent(together -> page.paragraph(reason(together)));
    page.heading("Colonies, the most worrying first").table(colonies());
    page.paragraph(COLONIES_NOTE);
    if (!yard.plans().isEmpty()) {
      page.heading("One plan for all counted colonies").table(plans());
      page.paragraph(plansNote());
    }
    page.heading("Cautions");
    Cautions.of(site).forEach(caution -> page.item(caution.title() + ": " + caution.text()));
    return page.render();
  }

  /** Name and size of the yard, and the day. */
  String title() {
    return site.name()
        + ": "
        + yard.colonies().size()
        + (yard.colonies().size() == 1 ? " colony" : " colonies")
        + " on "
        + DateWords.day(site.start());
  }

  String plansNote() {
    return "Means over the counted colonies and "
        + yard.settings().members()
        + " simulated seasons of each, so that a colony with very many mites weighs much; in"
        + " brackets the range of 8 in 10 of them. "
        + HarmWords.MEANING
        + " \"Best for\" counts colonies for which no other plan here is"
        + " better by more than anyone could see, so a colony may count for several plans.";
  }

  String answer() {
    Optional<YardPlan> found = yard.best();
    if (found.isEmpty()) {
      return "No colony can be judged: nothing was counted, or the counts fit no colony of this"
          + " place and season.";
    }
    YardPlan best = found.get();
    return "\""
        + best.plan().name()
        + "\" protects the winter bees of this yard best: "
        + Figures.percent(best.meanHarm(), best.low(), best.high())
        + " of the winter bees are harmed, in the mean of all colonies.";
  }

  String reason(Together together) {
    String above =
        together.aboveForSure()
            + (together.aboveForSure() == 1 ? " colony is" : " colonies are")
            + " above "
            + Figures.plain(together.limit())
            + " mites per 100 bees"
            + (together.perhapsAbove() == 0
                ? ". "
                : ", " + together.perhapsAbove() + " more may be. ");
    String mites =
        "The worst third of the colonies holds "
            + Math.round(100 * together.shareInWorstThird())
            + " % of the mites. ";
    String arrive =
        "Mites that arrive from other colonies account for up to "
            + Figures.plain(100 * together.harmByArrivals())
            + " of 100 winter bees harmed, under this plan or without treatment. ";
    String limits =
        "How many mites pass between the hives of one yard was not modelled; bees that drift and rob"
            + " carry them.";
    return switch (together.advice()) {
      case NONE_NOW ->
          "No colony reaches "
              + Figures.plain(together.limit())
              + " mites per 100 bees: nothing must be done today. Count all of them again in three"
              + " to four weeks.";
      case ALL_ON_ONE_DAY ->
          "Treat all colonies on one day. "
              + above
              + mites
              + arrive
              + "A colony that is left out goes on giving mites to those that were treated. "
              + limits;
      case LOW_ONES_MAY_WAIT ->
          "Colonies well below the limit may wait and be counted again. "
              + above
              + mites
              + arrive
              + limits;
    };
  }

  private TextTable colonies() {
    TextTable table =
        new TextTable()
            .text("colony")
            .number("mites per\n100 bees")
            .number("all mites")
            .text("look at")
            .text("note");
    colonyRows().forEach(row -> table.row(row.toArray(String[]::new)));
    return table;
  }

  /** A row for each colony: name, mites per 100 bees, all mites, doubts, note. */
  List<List<String>> colonyRows() {
    return yard.colonies().stream()
        .map(
            colony ->
                List.of(
                    colony.colony().name(),
                    colony.estimate().map(e -> estimate(e, e.mitesPer100Bees())).orElse("?"),
                    colony.estimate().map(e -> estimate(e, e.mites())).orElse("?"),
                    String.join("; ", doubts(colony)),
                    colony.colony().note()))
        .toList();
  }

  /** Middle and range, or the lower limit alone where more mites would give the same count. */
  private static String estimate(MiteEstimate estimate, MiteDistribution values) {
    Interval range = values.interval(YardColony.RANGE);
    if (estimate.warnings().contains(EstimateWarning.SATURATED)) {
      return ">" + Figures.plain(range.low());
    }
    return Figures.number(values.median(), range.low(), range.high());
  }

  /** What to look at in a row, in words. */
  static List<String> doubts(YardColony colony) {
    List<String> doubts =
        colony.colony().doubts().stream()
            .map(d -> d.field().isEmpty() ? d.message() : d.field() + ": " + d.message())
            .collect(Collectors.toCollection(ArrayList::new));
    colony
        .estimate()
        .ifPresent(
            e ->
                e.warnings().stream()
                    .filter(warning -> warning != EstimateWarning.SMALL_SAMPLE)
                    .map(EstimateWarning::words)
                    .forEach(doubts::add));
    return doubts;
  }

  private TextTable plans() {
    TextTable table =
        new TextTable()
            .text("plan, best first")
            .number("winter bees\nharmed")
            .number("mites\nleft")
            .number("best\nfor")
            .text("");
    planRows().forEach(row -> table.row(row.toArray(String[]::new)));
    return table;
  }

  /** A row for each plan: name, harm, mites left, colonies it is best for, what rules it out. */
  List<List<String>> planRows() {
    return yard.plans().stream()
        .map(
            plan ->
                List.of(
                    plan.plan().name(),
                    Figures.percent(plan.meanHarm(), plan.low(), plan.high()),
                    Figures.plain(plan.meanMitesLeft()),
                    Integer.toString(plan.bestFor()),
                    plan.ruledOut().isEmpty() ? "" : "no: " + String.join("; ", plan.ruledOut())))
        .toList();
  }
}
