package org.undercap.cli.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.undercap.cli.output.Numbers;
import org.undercap.comparison.Comparison;
import org.undercap.comparison.Ranking.By;
import org.undercap.comparison.RecountDay;
import org.undercap.ensemble.Outcome;
import org.undercap.scenario.Plan;
import org.undercap.treatment.PlanStep;

/** What else must be known of the plan to take: the mites that it leaves, and lost colonies. */
final class OutlookWords {
  /** A colony that is lost more often than this must be told of (fraction). */
  static final double LOSS_TOLD = 0.05;

  static final String FIND =
      ". \"undercap plan FILE\" finds treatments, \"undercap timing FILE\" their last date";

  private final Answer answer;
  private final Comparison comparison;
  private final int chosen;
  private final int nothing;
  private final double limit;

  OutlookWords(Answer answer) {
    this.answer = answer;
    comparison = answer.comparison();
    chosen = answer.advice().chosen();
    nothing = answer.nothing();
    limit = answer.scenario().limit();
  }

  /** One sentence or two for each thing. */
  List<String> items() {
    List<String> items = new ArrayList<>();
    left().ifPresent(items::add);
    tooMany().ifPresent(items::add);
    untreated().ifPresent(items::add);
    lost().ifPresent(items::add);
    return items;
  }

  private Optional<String> left() {
    if (!comparison.tells(Outcome.MITES_AT_MIDWINTER)) {
      return Optional.empty();
    }
    return Optional.of(
        "Mites in the colony at midwinter: about "
            + midwinter(chosen)
            + (chosen == nothing
                ? " if nothing is done."
                : "; if nothing is done " + midwinter(nothing) + "."));
  }

  private String midwinter(int place) {
    return Figures.saidWhole(answer.result(place), Outcome.MITES_AT_MIDWINTER);
  }

  /** The first day after a treatment of the plan on which it leaves more mites than the limit. */
  private Optional<Integer> tooManyOn() {
    Plan plan = answer.chosen().plan();
    LocalDate done =
        RecountDay.lastDayOfTreatment(plan, answer.scenario())
            .or(() -> plan.steps().stream().map(PlanStep::until).max(Comparator.naturalOrder()))
            .orElse(answer.scenario().start());
    List<LocalDate> dates = comparison.dates().countDates();
    for (int i = 0; i < dates.size(); i++) {
      LocalDate date = dates.get(i);
      if (date.isAfter(done) && answer.median(chosen, PlanTables.COUNTS.get(i)) > limit) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }

  private Optional<String> tooMany() {
    return tooManyOn()
        .map(
            i ->
                (chosen == nothing ? "Not without treatment: on " : "Not enough by itself: on ")
                    + on100Bees(chosen, i)
                    + ", above the limit of "
                    + Numbers.exact(limit)
                    + ". "
                    + what(answer.nextTreatment(countDate(i))));
  }

  /** The same for the days on which something is to be done. */
  Optional<PlanDate> furtherTreatment() {
    return tooManyOn()
        .map(
            i ->
                new PlanDate(
                    countDate(i),
                    PlanDate.Kind.DECIDE,
                    (chosen == nothing ? "Treat" : "Treat again")
                        + " before this day: about "
                        + Figures.said(answer.result(chosen), PlanTables.COUNTS.get(i))
                        + " mites on 100 bees expected, above the limit of "
                        + Numbers.exact(limit)
                        + (answer.nextTreatment(countDate(i)).isPresent() ? "" : FIND)));
  }

  private LocalDate countDate(int number) {
    return comparison.dates().countDates().get(number);
  }

  private String what(Optional<LocalDate> next) {
    return chosen == nothing
        ? "Find a treatment before then."
        : next.map(day -> "The plan treats again only on " + DateWords.day(day) + "; count before.")
            .orElse("Plan a further treatment before then.");
  }

  /** What becomes of the mites without treatment, where that does the winter bees no harm. */
  private Optional<String> untreated() {
    int last = comparison.dates().countDates().size() - 1;
    Outcome count = PlanTables.COUNTS.get(last);
    if (chosen == nothing
        || answer.behind(nothing).filter(by -> by != By.MITES_LEFT).isPresent()
        || answer.median(nothing, count) > limit) {
      return Optional.empty();
    }
    double[] mites =
        Arrays.stream(answer.result(nothing).outcomes().of(count))
            .filter(m -> !Double.isNaN(m))
            .toArray();
    double above = Arrays.stream(mites).filter(m -> m > limit).count() / (double) mites.length;
    return Optional.of(
        "If nothing is done: on "
            + on100Bees(nothing, last)
            + ", above the limit of "
            + Numbers.exact(limit)
            + " "
            + Figures.runs(above)
            + ".");
  }

  private String on100Bees(int place, int date) {
    return DateWords.day(countDate(date))
        + " there are about "
        + Figures.said(answer.result(place), PlanTables.COUNTS.get(date))
        + " mites on 100 bees";
  }

  private Optional<String> lost() {
    double share = answer.lost(chosen);
    boolean said = answer.behind(nothing).equals(Optional.of(By.LOSSES));
    if (share < LOSS_TOLD || said) {
      return Optional.empty();
    }
    String runs = Figures.runs(share);
    String untreated = Figures.runs(answer.lost(nothing));
    return Optional.of(
        "The colony is lost "
            + runs
            + (chosen == nothing
                ? "."
                : runs.equals(untreated)
                    ? ", and as often if nothing is done."
                    : "; if nothing is done " + untreated + "."));
  }
}
