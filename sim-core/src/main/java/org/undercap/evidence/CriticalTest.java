package org.undercap.evidence;

import java.time.LocalDate;

/**
 * Efficacy as trials of treatments measure it: what the treatment kills in the test period is set
 * against that plus what a follow-up treatment finds afterwards, {@code killed / (killed + left)}.
 *
 * <p>Killed are the mites whose death the model books to the treatment, on bees and under the
 * cappings, from the first day of the treatment to the last day of the test period; mites that die
 * by themselves or fall when bees emerge are not among them. Left are all mites, on bees and
 * mothers under the cappings, on the morning after the test period: the follow-up is taken to find
 * them all. Mites born and arrived in the period count on the side on which they end.
 */
final class CriticalTest {
  private CriticalTest() {}

  /**
   * Efficacy of a treatment.
   *
   * @param course a run that goes beyond the test period
   * @param first first day of the treatment
   * @param days length of the test period (days)
   * @return share killed (%)
   */
  static double percent(Course course, LocalDate first, int days) {
    double killed = course.sum(first, first.plusDays(days - 1L), course::killed);
    return 100 * killed / (killed + course.mites(first.plusDays(days)));
  }

  /**
   * Days until a share of all mites of the test, killed and left, has been killed.
   *
   * @param course a run that goes beyond the test period
   * @param first first day of the treatment
   * @param days length of the test period (days)
   * @param share share of the mites (fraction)
   * @return days, or the length of the test period plus one if it is not reached
   */
  static int daysUntil(Course course, LocalDate first, int days, double share) {
    double all =
        course.sum(first, first.plusDays(days - 1L), course::killed)
            + course.mites(first.plusDays(days));
    double killed = 0;
    int day = 0;
    while (day < days && killed < share * all) {
      killed += course.killed(course.day(first.plusDays(day)));
      day++;
    }
    return killed < share * all ? days + 1 : day;
  }
}
