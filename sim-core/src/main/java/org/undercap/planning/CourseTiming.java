package org.undercap.planning;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.undercap.comparison.Ranking;
import org.undercap.ensemble.OutcomeTable;
import org.undercap.treatment.Course;
import org.undercap.treatment.Method;

/**
 * A usual course of a method, begun on one date after another.
 *
 * @param method the treatment
 * @param course how often it is applied
 * @param starts one for each start date, in their order
 * @param best place of the start that harms winter bees least among those that nothing rules out;
 *     empty if every start is ruled out
 * @param last last start that is in time; empty if every start is ruled out or none helps the
 *     winter bees by more than anyone could see
 */
public record CourseTiming(
    Method method,
    Course course,
    List<StartOutcome> starts,
    Optional<Integer> best,
    Optional<LastStart> last) {
  /**
   * Copies the list.
   *
   * @param method the treatment
   * @param course how often it is applied
   * @param starts one for each start date, at least one
   * @param best place of the best start
   * @param last last start that is in time
   * @throws IllegalArgumentException if there is no start
   */
  public CourseTiming {
    starts = List.copyOf(starts);
    if (starts.isEmpty()) {
      throw new IllegalArgumentException("timing needs at least one start date");
    }
  }

  /**
   * Judges the starts.
   *
   * @param method the treatment
   * @param course how often it is applied
   * @param starts one for each start date
   * @param untreated outcomes without treatment
   * @param inTime what still counts as in time
   * @return the timing
   */
  static CourseTiming of(
      Method method,
      Course course,
      List<StartOutcome> starts,
      OutcomeTable untreated,
      InTime inTime) {
    List<Integer> open =
        IntStream.range(0, starts.size())
            .boxed()
            .filter(i -> starts.get(i).ruledOut().isEmpty())
            .toList();
    Optional<Integer> best =
        open.stream().min(Comparator.comparingDouble(i -> harm(starts.get(i).outcomes())));
    Optional<LastStart> last =
        best.filter(i -> harm(untreated) > harm(starts.get(i).outcomes()) + Ranking.STEP)
            .map(
                i ->
                    last(
                        starts,
                        open,
                        i,
                        inTime.above(harm(untreated), harm(starts.get(i).outcomes()))));
    return new CourseTiming(method, course, starts, best, last);
  }

  private static LastStart last(
      List<StartOutcome> starts, List<Integer> open, int best, double above) {
    double least = harm(starts.get(best).outcomes());
    int last = best;
    for (int i : open) {
      if (i > last && harm(starts.get(i).outcomes()) <= least + above) {
        last = i;
      }
    }
    double[] then = starts.get(last).outcomes().of(Ranking.HARM);
    double[] first = starts.get(best).outcomes().of(Ranking.HARM);
    long inTime = IntStream.range(0, then.length).filter(m -> then[m] <= first[m] + above).count();
    return new LastStart(starts.get(last).date(), (double) inTime / then.length);
  }

  private static double harm(OutcomeTable outcomes) {
    return outcomes.median(Ranking.HARM);
  }

  /**
   * Method and number of applications in words.
   *
   * @return as in {@code thymol gel, 2 times 14 days apart}
   */
  public String words() {
    return course.words(method);
  }
}
