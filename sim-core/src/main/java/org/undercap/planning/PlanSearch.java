package org.undercap.planning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import org.undercap.ensemble.EnsembleSettings;
import org.undercap.ensemble.OutcomeTable;
import org.undercap.ensemble.StartMites;
import org.undercap.ensemble.Trials;
import org.undercap.parameter.ParameterId;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Scenario;
import org.undercap.treatment.Method;

/**
 * Looks for good schedules of up to three usual courses. All single courses are tried first, on few
 * members; then courses are added to the best of them, and to the best of those; the best of all
 * are tried again on many members. So not every pair and hardly any triple is tried: {@link Result}
 * says how many were, on how many members.
 */
public final class PlanSearch {
  /** Schedules tried before progress is told: enough to keep all threads busy. */
  private static final int AT_A_TIME = 64;

  private static final int MOST_COURSES = 3;

  /** Schedules to which one more course is added, at most. */
  private static final int MOST_PARENTS = 300;

  private final TrialScope scope;
  private final Candidates candidates;
  private final SearchSettings settings;
  private final double mitesStep;
  private final boolean withCost;
  private final StartMites mites;

  private PlanSearch(Scenario scenario, StartMites mites, SearchSettings settings) {
    this.mites = mites;
    this.settings = settings;
    scope = TrialScope.of(scenario);
    candidates = new Candidates(scope.scenario(), starts(scenario, settings));
    mitesStep = scenario.parameters().value(ParameterId.PLANNING_MITES_STEP);
    withCost = withoutCost().isEmpty();
  }

  private static StartDates starts(Scenario scenario, SearchSettings settings) {
    LocalDate from = settings.from().orElse(scenario.start());
    if (from.isBefore(scenario.start()) || from.isAfter(scenario.end())) {
      throw new IllegalArgumentException(
          "first start "
              + from
              + " must lie in the run, "
              + scenario.start()
              + " to "
              + scenario.end());
    }
    return new StartDates(from, scenario.end(), StartDates.WEEK);
  }

  /**
   * Searches.
   *
   * @param scenario the scenario; its own plans are not looked at
   * @param mites the mites that it begins with
   * @param settings how long it takes
   * @return the best schedules
   * @throws IllegalArgumentException if no colony of this season and place can be scaled to the
   *     facts, or the first day on which a treatment may begin lies outside the run
   */
  public static Result of(Scenario scenario, StartMites mites, SearchSettings settings) {
    return of(scenario, mites, settings, tried -> {});
  }

  /**
   * Searches and tells how far it is.
   *
   * @param scenario the scenario; its own plans are not looked at
   * @param mites the mites that it begins with
   * @param settings how long it takes
   * @param progress told the number of schedules tried since it was told before; over the search no
   *     more than the settings allow, the finalists counted again
   * @return the best schedules
   * @throws IllegalArgumentException if no colony of this season and place can be scaled to the
   *     facts, or the first day on which a treatment may begin lies outside the run
   */
  public static Result of(
      Scenario scenario, StartMites mites, SearchSettings settings, IntConsumer progress) {
    return new PlanSearch(scenario, mites, settings).search(progress);
  }

  private Result search(IntConsumer progress) {
    EnsembleSettings few = settings.ensemble().withMembers(settings.screening());
    Trials screening = new Trials(scope.scenario(), mites.belief(), few);
    List<SearchRound> rounds = new ArrayList<>();
    List<TriedSchedule> all = new ArrayList<>();
    List<Schedule> parents = List.of(Schedule.NOTHING);
    boolean complete = true;
    for (int courses = 1; courses <= MOST_COURSES && !parents.isEmpty(); courses++) {
      int room = settings.schedules() - all.size();
      int most = room / (MOST_COURSES - courses + 1);
      List<Schedule> found =
          courses == 1 ? candidates.single() : candidates.extended(parents, most);
      complete &= found.size() <= most;
      List<TriedSchedule> tried =
          tryOut(progress, screening, courses == 1 ? spread(found, most) : first(found, most));
      if (!tried.isEmpty()) {
        String what = courses == 1 ? "1 course" : courses + " courses";
        rounds.add(new SearchRound(what, tried.size(), settings.screening(), complete));
      }
      all.addAll(tried);
      complete &= tried.size() <= MOST_PARENTS;
      parents = best(tried, MOST_PARENTS).stream().map(TriedSchedule::schedule).toList();
    }
    Trials many = new Trials(scope.scenario(), mites.belief(), settings.ensemble());
    List<Schedule> last =
        best(all, settings.finalists()).stream().map(TriedSchedule::schedule).toList();
    List<TriedSchedule> finalists = tryOut(progress, many, last);
    rounds.add(
        new SearchRound(
            "the best of these again", last.size(), settings.ensemble().members(), true));
    OutcomeTable untreated = many.run(List.of(Plan.doNothing())).get(0);
    return new Result(
        scope, settings, mites.median(), rounds, front(finalists), untreated, withoutCost());
  }

  private static List<Schedule> first(List<Schedule> schedules, int most) {
    return schedules.subList(0, Math.min(most, schedules.size()));
  }

  /** As many schedules, evenly spread over all of them. */
  private static List<Schedule> spread(List<Schedule> schedules, int most) {
    int number = Math.min(most, schedules.size());
    return IntStream.range(0, number)
        .mapToObj(i -> schedules.get((int) ((long) i * schedules.size() / number)))
        .toList();
  }

  /** Methods whose cost is not known, so that cost cannot be weighed. */
  private List<String> withoutCost() {
    return candidates.methods().stream()
        .filter(m -> !scope.scenario().keeper().costs().containsKey(m.id()))
        .map(Method::name)
        .toList();
  }

  private List<TriedSchedule> tryOut(
      IntConsumer progress, Trials trials, List<Schedule> schedules) {
    List<OutcomeTable> outcomes = new ArrayList<>();
    for (int from = 0; from < schedules.size(); from += AT_A_TIME) {
      List<Schedule> some = schedules.subList(from, Math.min(from + AT_A_TIME, schedules.size()));
      outcomes.addAll(trials.run(some.stream().map(Schedule::plan).toList()));
      progress.accept(some.size());
    }
    List<TriedSchedule> tried = new ArrayList<>();
    for (int i = 0; i < schedules.size(); i++) {
      Schedule schedule = schedules.get(i);
      tried.add(
          new TriedSchedule(
              schedule, outcomes.get(i), schedule.cost(scope.scenario().keeper().costs())));
    }
    return tried;
  }

  private List<List<Double>> aims(List<TriedSchedule> tried) {
    return tried.stream().map(t -> t.aims(scope.mitesLeft(), mitesStep, withCost)).toList();
  }

  private Comparator<TriedSchedule> byHarm() {
    return Comparator.<TriedSchedule>comparingDouble(
            t -> t.aims(scope.mitesLeft(), mitesStep, withCost).get(0))
        .thenComparingDouble(t -> t.outcomes().median(scope.mitesLeft()));
  }

  /** Some schedules in the order of the layers, within each by harm. */
  private List<TriedSchedule> best(List<TriedSchedule> tried, int most) {
    List<TriedSchedule> best = new ArrayList<>();
    for (List<Integer> layer : Front.layers(aims(tried), most)) {
      best.addAll(layer.stream().map(tried::get).sorted(byHarm()).toList());
    }
    return best.size() > most ? best.subList(0, most) : best;
  }

  private List<TriedSchedule> front(List<TriedSchedule> tried) {
    List<List<Integer>> layers = Front.layers(aims(tried), 1);
    return layers.isEmpty()
        ? List.of()
        : layers.get(0).stream()
            .map(tried::get)
            .sorted(
                Comparator.comparingDouble(TriedSchedule::harm)
                    .thenComparingDouble(t -> t.outcomes().median(scope.mitesLeft())))
            .toList();
  }

  /**
   * What a search found.
   *
   * @param scope the run, and how the mites left are told
   * @param settings how long it took
   * @param mites middle value of all mites on the first day (mites)
   * @param rounds how many schedules were tried on how many members
   * @param front schedules that no other beats in harm, mites left, cost and minutes at once, the
   *     least harm first; empty if nothing may be proposed
   * @param untreated outcomes without treatment
   * @param withoutCost methods whose cost is not known; if there are any, cost was not weighed
   */
  public record Result(
      TrialScope scope,
      SearchSettings settings,
      double mites,
      List<SearchRound> rounds,
      List<TriedSchedule> front,
      OutcomeTable untreated,
      List<String> withoutCost) {
    /**
     * Copies the lists.
     *
     * @param scope the run
     * @param settings how long it took
     * @param mites middle value of all mites on the first day (mites)
     * @param rounds how many schedules were tried on how many members
     * @param front the best schedules
     * @param untreated outcomes without treatment
     * @param withoutCost methods whose cost is not known
     */
    public Result {
      rounds = List.copyOf(rounds);
      front = List.copyOf(front);
      withoutCost = List.copyOf(withoutCost);
    }

    /**
     * Schedules that were tried on at least the members of the screening.
     *
     * @return number of schedules
     */
    public int tried() {
      return rounds.subList(0, rounds.size() - 1).stream().mapToInt(SearchRound::schedules).sum();
    }
  }
}
