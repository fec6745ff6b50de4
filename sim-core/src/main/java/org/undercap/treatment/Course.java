package org.undercap.treatment;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Applications of one method that belong together.
 *
 * @param times number of applications
 * @param everyDays days from one to the next (days)
 */
public record Course(int times, int everyDays) {
  /**
   * Checks the numbers.
   *
   * @param times at least 1
   * @param everyDays at least 1 (days) if there are several applications, else at least 0
   * @throws IllegalArgumentException if a number is out of range
   */
  public Course {
    if (times < 1) {
      throw new IllegalArgumentException("applications " + times + " must be at least 1");
    }
    if (everyDays < 0 || (times > 1 && everyDays == 0)) {
      throw new IllegalArgumentException(
          "days between applications " + everyDays + " must be at least 1");
    }
  }

  /**
   * The applications with the full dose.
   *
   * @param method the treatment
   * @param start day of the first
   * @return as many as there are, in the order of their dates
   */
  public List<PlanStep> of(Method method, LocalDate start) {
    return IntStream.range(0, times)
        .<PlanStep>mapToObj(
            i -> new PlanStep.Application(start.plusDays((long) i * everyDays), method, 1))
        .toList();
  }

  /**
   * The number of applications, as in {@code 2 times 14 days apart}.
   *
   * @return words
   */
  public String words() {
    return times == 1 ? "once" : times + " times " + everyDays + " days apart";
  }

  /**
   * The name of the method with the number of applications, as in {@code thymol gel, 2 times 14
   * days apart}.
   *
   * @param method the treatment
   * @return words
   */
  public String words(Method method) {
    return times == 1 ? method.name() : method.name() + ", " + words();
  }
}
