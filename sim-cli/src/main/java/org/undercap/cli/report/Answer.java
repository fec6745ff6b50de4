package org.undercap.cli.report;

import java.text.Bidi;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.undercap.advice.Advice;
import org.undercap.advice.Followup;
import org.undercap.advice.NextWash;
import org.undercap.comparison.Comparison;
import org.undercap.comparison.Ranking;
import org.undercap.comparison.Ranking.By;
import org.undercap.comparison.RecountDay;
import org.undercap.ensemble.Outcome;
import org.undercap.ensemble.PlanResult;
import org.undercap.ensemble.StartMites;
import org.undercap.monitoring.MiteEstimate;
import org.undercap.monitoring.MitePosterior;
import org.undercap.scenario.Scenario;
import org.undercap.treatment.PlanStep;

/**
 * All that an answer is made of.
 *
 * @param advice what to do
 * @param mites the mites at the begin
 * @param estimate what the counts say about them; empty if the user gave the number
 */
public record Answer(Advice advice, StartMites mites, Optional<MiteEstimate> estimate) {
  private static final String DECIDE =
      "Decide what to change: a plan, or what rules it out; then compare again";

  /**
   * Makes an answer, with the estimate that people are told.
   *
   * @param advice what to do
   * @param mites the mites at the begin
   * @return the answer
   */
  public static Answer of(Advice advice, StartMites mites) {
    return new Answer(advice, mites, mites.posterior().map(MitePosterior::estimate));
  }

  /**
   * Whether there are plans, and none of them can be used.
   *
   * @return true if something rules out each of them
   */
  public boolean stuck() {
    return scenario().plans().size() > 1 && advice.second().isEmpty();
  }

  Scenario scenario() {
    return comparison().scenario();
  }

  Comparison comparison() {
    return advice.comparison();
  }

  PlanResult result(int place) {
    return comparison().results().get(place);
  }

  /** The plan to take. */
  PlanResult chosen() {
    return result(advice.chosen());
  }

  /** The middle value of an outcome under a plan. */
  double median(int place, Outcome outcome) {
    return result(place).outcomes().median(outcome);
  }

  /** Share of the simulated seasons in which a colony is lost under a plan (fraction). */
  double lost(int place) {
    return result(place).outcomes().mean(Outcome.LOST);
  }

  /** Middle share of the bees at midwinter that are weakened under a plan (fraction). */
  double weakened(int place) {
    return median(place, Outcome.WEAKENED_AT_MIDWINTER);
  }

  /** Whether a plan harms the brood that is judged as little as the plan to take, to the eye. */
  boolean isAsGood(int place) {
    return median(place, Ranking.HARM) - median(advice.chosen(), Ranking.HARM) <= Ranking.STEP;
  }

  /** By what a plan fell behind the plan to take; empty if by nothing, or if it is ruled out. */
  Optional<By> behind(int place) {
    return advice.behind().get(place);
  }

  /** Name of a plan in quotation marks, unless it is doing nothing. */
  String name(int place) {
    String name = result(place).plan().name();
    return result(place).plan().steps().isEmpty() ? "doing nothing" : quoted(name);
  }

  /** Names in scripts that run from right to left must not turn the sentence around them. */
  private static String quoted(String name) {
    boolean rightToLeft = Bidi.requiresBidi(name.toCharArray(), 0, name.length());
    return rightToLeft ? "\"\u2068" + name + "\u2069\"" : "\"" + name + "\"";
  }

  /** Place of the plan of doing nothing. */
  int nothing() {
    List<PlanResult> results = comparison().results();
    for (int place = 0; place < results.size(); place++) {
      if (results.get(place).plan().steps().isEmpty()) {
        return place;
      }
    }
    throw new IllegalStateException("a scenario always has the plan of doing nothing");
  }

  /** The first day after another on which the chosen plan applies a treatment. */
  Optional<LocalDate> nextTreatment(LocalDate day) {
    return chosen().plan().steps().stream()
        .filter(step -> step instanceof PlanStep.Application)
        .map(PlanStep::date)
        .filter(date -> date.isAfter(day))
        .min(Comparator.naturalOrder());
  }

  /** Places of all plans in the order of a table: the possible ones first, the best on top. */
  List<Integer> places() {
    List<Integer> places = new ArrayList<>(advice.order());
    comparison().ranking().stream().filter(p -> !places.contains(p)).forEach(places::add);
    return List.copyOf(places);
  }

  /** What to do on which day under the chosen plan, and when to count again, by date. */
  List<PlanDate> dates() {
    List<PlanDate> dates = new ArrayList<>(new PlanWords(advice.chosenPlan()).dates());
    supersOff().ifPresent(dates::add);
    advice.followup().map(this::recount).ifPresent(dates::add);
    advice.nextWash().map(this::wash).ifPresent(dates::add);
    if (stuck()) {
      dates.add(new PlanDate(scenario().start(), PlanDate.Kind.DECIDE, DECIDE));
    }
    new OutlookWords(this).furtherTreatment().filter(this::isNew).ifPresent(dates::add);
    dates.sort(Comparator.comparing(PlanDate::date).thenComparing(PlanDate::kind));
    return List.copyOf(dates);
  }

  /** Whether a count before that day does not already say so. */
  private boolean isNew(PlanDate treatment) {
    return advice
        .followup()
        .filter(count -> !count.date().isAfter(treatment.date()))
        .filter(count -> RecountWords.stillTooMany(count, scenario().limit()))
        .isEmpty();
  }

  /** The day on which the honey comes off, if the plan has to wait for that. */
  private Optional<PlanDate> supersOff() {
    return scenario()
        .supersUntil(chosen().plan())
        .filter(day -> !chosen().plan().steps().isEmpty() && !day.isBefore(scenario().start()))
        .map(day -> new PlanDate(day, PlanDate.Kind.MEASURE, "Take the honey supers off"));
  }

  private PlanDate wash(NextWash wash) {
    boolean cold = RecountDay.tooCold(scenario(), wash.date());
    return new PlanDate(
        wash.date(), PlanDate.Kind.COUNT, RecountWords.of(wash, scenario().limit(), cold));
  }

  /** Whether doing nothing comes first, since no treatment is needed at all or before a wash. */
  boolean needsNoTreatment() {
    return advice.needless() || waiting().isPresent();
  }

  /** The plan that waits for the next wash; empty if there is nothing to wait with. */
  Optional<Integer> waiting() {
    return advice.nextWash().flatMap(NextWash::instead);
  }

  private PlanDate recount(Followup followup) {
    String words =
        RecountWords.of(
            followup,
            scenario().limit(),
            nextTreatment(followup.date()),
            RecountDay.tooCold(scenario(), followup.date()));
    return new PlanDate(followup.date(), PlanDate.Kind.COUNT, words);
  }
}
