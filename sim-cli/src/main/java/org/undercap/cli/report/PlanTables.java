package org.undercap.cli.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.undercap.cli.output.Numbers;
import org.undercap.cli.report.Report.Block;
import org.undercap.cli.report.Report.Column;
import org.undercap.cli.report.Report.Grid;
import org.undercap.cli.report.Report.Paragraph;
import org.undercap.cli.report.Report.Subheading;
import org.undercap.cli.report.Report.Term;
import org.undercap.cli.report.Report.Terms;
import org.undercap.comparison.Comparison;
import org.undercap.comparison.CourseEfficacy;
import org.undercap.ensemble.Outcome;
import org.undercap.ensemble.OutcomeTable;
import org.undercap.ensemble.PlanResult;
import org.undercap.scenario.Plan;
import org.undercap.treatment.Method;

/** All plans held against each other in tables, the best first. */
final class PlanTables {
  /** Mites on 100 bees on each of the count dates. */
  static final List<Outcome> COUNTS =
      List.of(
          Outcome.MITES_PER_100_FIRST, Outcome.MITES_PER_100_SECOND, Outcome.MITES_PER_100_LAST);

  private final Answer answer;
  private final Comparison comparison;
  private final List<Integer> places;

  PlanTables(Answer answer) {
    this.answer = answer;
    comparison = answer.comparison();
    places = answer.places();
  }

  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Terms(
            places.stream()
                .map(place -> answer.result(place).plan())
                .map(plan -> new Term(plan.name(), what(plan)))
                .toList()));
    blocks.add(
        new Paragraph(
            "Each figure is the middle of "
                + comparison.settings().members()
                + " simulated seasons that differ in what nobody knows (mites, bees, weather, mites"
                + " arriving, strength of the treatment); in brackets the range of 8 in 10 of them."));
    blocks.add(new Subheading("Winter bees"));
    blocks.add(harm());
    blocks.add(new Paragraph(harmNote()));
    blocks.add(new Paragraph(HarmWords.order(comparison.dates().judged())));
    blocks.add(new Subheading("Mites"));
    blocks.add(mites());
    blocks.add(
        new Paragraph(
            "\"On 100 bees\" is what sits on 100 adult bees; a wash finds a little less. "
                + limit()
                + (losses() ? " Lost colonies do not count." : "")));
    blocks.add(new Subheading("Work and money"));
    blocks.add(effort());
    missingPrices().ifPresent(blocks::add);
    efficacy(blocks);
    return blocks;
  }

  private String limit() {
    double limit = answer.scenario().limit();
    String mites = Numbers.exact(limit) + (limit == 1 ? " mite" : " mites") + " on 100 bees";
    return answer.scenario().threshold().isPresent()
        ? "Your limit is " + mites + "."
        : "You named no limit, so the usual one is used: " + mites + ".";
  }

  private static String what(Plan plan) {
    return plan.steps().isEmpty()
        ? "No treatment, and nothing else against mites."
        : PlanWords.capital(new PlanWords(plan).phrase()) + ".";
  }

  private Grid grid(
      String caption, Map<Column, Function<PlanResult, String>> cells, List<Column> order) {
    List<Column> columns = new ArrayList<>(List.of(Column.words("plan, best first")));
    columns.addAll(order);
    List<List<String>> rows = new ArrayList<>();
    for (int place : places) {
      PlanResult result = answer.result(place);
      List<String> row = new ArrayList<>(List.of(label(place)));
      order.forEach(column -> row.add(cells.get(column).apply(result)));
      rows.add(row);
    }
    return new Grid(caption, columns, rows);
  }

  private String label(int place) {
    return answer.result(place).plan().name()
        + (answer.advice().ruledOut().get(place).isEmpty() ? "" : " (ruled out)");
  }

  private Grid harm() {
    Cells cells = new Cells();
    cells.add(
        HarmWords.bees(comparison.dates().judged()) + " harmed",
        r -> Figures.percent(r, Outcome.WINTER_BROOD_PARASITISED));
    if (comparison.tells(Outcome.WEAKENED_AT_MIDWINTER)) {
      cells.add(
          "weakened bees at midwinter", r -> Figures.percent(r, Outcome.WEAKENED_AT_MIDWINTER));
    }
    if (comparison.tells(Outcome.BEES_AFTER_WINTER)) {
      cells.add("bees at winter's end", r -> Figures.number(r, Outcome.BEES_AFTER_WINTER));
    }
    if (losses()) {
      cells.add("colony lost", r -> Figures.runs(r.outcomes().mean(Outcome.LOST)));
    }
    return cells.grid("What becomes of the winter bees under each plan");
  }

  /** Whether colonies are lost often enough under any plan to be told of. */
  private boolean losses() {
    return places.stream()
        .anyMatch(p -> answer.result(p).outcomes().mean(Outcome.LOST) >= OutlookWords.LOSS_TOLD);
  }

  private String harmNote() {
    String brood =
        HarmWords.MEANING
            + " Counted are those that emerge from "
            + DateWords.day(comparison.dates().winterBeesFrom())
            + " to "
            + DateWords.day(comparison.dates().winterBeesUntil())
            + ".";
    String ends =
        comparison.tells(Outcome.BEES_AFTER_WINTER)
            ? " With many mites fewer bees live to winter's end than shown here: viruses, and mites"
                + " that feed on the bees themselves, are not in the model."
            : " The simulation ends before the end of winter, so bees at winter's end are not told.";
    return brood
        + ends
        + (losses()
            ? " A colony lost before midwinter counts with all of them harmed; weakened are those of"
                + " the colonies that live."
            : "");
  }

  private Grid mites() {
    Cells cells = new Cells();
    List<LocalDate> dates = comparison.dates().countDates();
    for (int i = 0; i < dates.size(); i++) {
      Outcome count = COUNTS.get(i);
      cells.add("on 100 bees " + DateWords.brief(dates.get(i)), r -> Figures.number(r, count));
    }
    cells.add("days above the limit", r -> Figures.wholeRange(daysAbove(r.outcomes())));
    if (comparison.tells(Outcome.MITES_AT_MIDWINTER)) {
      cells.add(
          "all mites at midwinter",
          r -> Figures.wholeRange(r.outcomes().of(Outcome.MITES_AT_MIDWINTER)));
    }
    return cells.grid("Mites under each plan");
  }

  private static double[] daysAbove(OutcomeTable outcomes) {
    double[] before = outcomes.of(Outcome.DAYS_ABOVE_BEFORE_MIDWINTER);
    double[] after = outcomes.of(Outcome.DAYS_ABOVE_AFTER_MIDWINTER);
    return IntStream.range(0, before.length)
        .mapToDouble(i -> Math.rint(before[i] + after[i]))
        .toArray();
  }

  private Grid effort() {
    Cells cells = new Cells();
    cells.add("minutes", r -> Figures.whole(answer.scenario().minutes(r.plan())));
    cells.add("cost", r -> cost(r.plan()));
    cells.addWords("what rules it out", r -> ruledOut(r.plan()));
    return cells.grid("What each plan takes, for one colony");
  }

  private String ruledOut(Plan plan) {
    for (int place : places) {
      if (answer.result(place).plan().equals(plan)) {
        String reasons = RuledOutWords.reasonsAndRemedies(answer, place);
        return reasons.isEmpty() ? "nothing" : reasons;
      }
    }
    throw new IllegalArgumentException("no plan " + plan.name());
  }

  private String cost(Plan plan) {
    double cost = answer.scenario().leastCost(plan);
    return answer.scenario().withoutPrice(plan).isEmpty()
        ? Numbers.exact(cost)
        : cost == 0 ? "not given" : "at least " + Numbers.exact(cost);
  }

  /** Which prices are missing, if some are known. */
  private Optional<Paragraph> missingPrices() {
    List<String> missing =
        places.stream()
            .flatMap(place -> answer.scenario().withoutPrice(answer.result(place).plan()).stream())
            .map(Method::name)
            .distinct()
            .toList();
    return missing.isEmpty() || answer.scenario().keeper().costs().isEmpty()
        ? Optional.empty()
        : Optional.of(new Paragraph("No price was given for " + DateWords.joined(missing) + "."));
  }

  private void efficacy(List<Block> blocks) {
    List<List<String>> rows = new ArrayList<>();
    for (int place : places) {
      for (CourseEfficacy course :
          CourseEfficacy.of(comparison.runs().get(place), answer.scenario())) {
        rows.add(
            List.of(
                answer.result(place).plan().name(),
                course.name() + " " + PlanWords.times(course.applications().size()),
                DateWords.brief(course.from()) + " to " + DateWords.brief(course.until()),
                Numbers.percent(course.onBees()),
                Numbers.percent(course.ofAll())));
      }
    }
    if (!rows.isEmpty()) {
      blocks.add(new Subheading("What the treatments kill"));
      blocks.add(
          new Grid(
              "Two figures of efficacy for each treatment",
              List.of(
                  Column.words("plan"),
                  Column.words("treatment"),
                  Column.words("acts"),
                  Column.numbers("of the mites on bees"),
                  Column.numbers("of all mites in the colony")),
              rows));
      blocks.add(
          new Paragraph(
              "The first figure is for mites that sit on the bees all that time. The second counts"
                  + " all mites that were in the colony, arrived or were born meanwhile, those under"
                  + " the cappings too. Both are of a typical season."));
    }
  }

  /** The columns of a table with what stands in them. */
  private final class Cells {
    private final List<Column> order = new ArrayList<>();
    private final Map<Column, Function<PlanResult, String>> cells = new HashMap<>();

    void add(String heading, Function<PlanResult, String> cell) {
      put(Column.numbers(heading), cell);
    }

    void addWords(String heading, Function<PlanResult, String> cell) {
      put(Column.words(heading), cell);
    }

    private void put(Column column, Function<PlanResult, String> cell) {
      order.add(column);
      cells.put(column, cell);
    }

    Grid grid(String caption) {
      return PlanTables.this.grid(caption, cells, order);
    }
  }
}
