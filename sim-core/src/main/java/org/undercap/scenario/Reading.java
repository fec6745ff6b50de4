package org.undercap.scenario;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What came of reading a file: a value, or all the problems that stand in its way.
 *
 * @param <T> type of the value
 */
public record Reading<T>(Optional<T> value, List<Problem> problems) {

  /**
   * Checks that there is either a value or a problem.
   *
   * @param value the value; empty if there are problems
   * @param problems all problems in the order of the file; empty if there is a value
   * @throws IllegalArgumentException if there are both or neither
   */
  public Reading {
    problems = List.copyOf(problems);
    if (value.isPresent() != problems.isEmpty()) {
      throw new IllegalArgumentException("a reading has either a value or problems");
    }
  }

  /**
   * A good reading.
   *
   * @param <T> type of the value
   * @param value the value
   * @return the reading
   */
  public static <T> Reading<T> of(T value) {
    return new Reading<>(Optional.of(value), List.of());
  }

  /**
   * A failed reading.
   *
   * @param <T> type of the value
   * @param problems at least one problem
   * @return the reading
   */
  public static <T> Reading<T> failed(Problems problems) {
    return new Reading<>(Optional.empty(), problems.all());
  }

  /**
   * The value of a reading that must not have failed, as of a file that ships with a program.
   *
   * @return the value
   * @throws IllegalArgumentException if there are problems; the message holds them all
   */
  public T orThrow() {
    return value.orElseThrow(
        () ->
            new IllegalArgumentException(
                problems.stream().map(Problem::text).collect(Collectors.joining("\n"))));
  }
}
