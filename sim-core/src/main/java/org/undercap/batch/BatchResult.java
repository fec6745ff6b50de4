package org.undercap.batch;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.undercap.ensemble.Outcome;

/** What came of a run of a batch. */
public record BatchResult(
    BatchRow row,
    Optional<String> problem,
    Optional<LocalDate> lostOn,
    List<OptionalDouble> outcomes,
    List<BatchDay> days) {

  /**
   * Copies the lists.
   *
   * @param row the run
   * @param problem why it could not be run, as of a colony that cannot live in the climate
   * @param lostOn day on which the colony was lost
   * @param outcomes one value for each {@link Outcome}, in their order; empty where the run does
   *     not tell it, all empty if there is a problem
   * @param days the days that were asked for
   */
  public BatchResult {
    outcomes = List.copyOf(outcomes);
    days = List.copyOf(days);
  }

  /** A run that could not be run. */
  static BatchResult failed(BatchRow row, String why) {
    List<OptionalDouble> unknown =
        Collections.nCopies(Outcome.values().length, OptionalDouble.empty());
    return new BatchResult(row, Optional.of(why), Optional.empty(), unknown, List.of());
  }

  /**
   * One outcome.
   *
   * @param outcome which
   * @return its value, if the run tells it; unit as {@link Outcome} says
   */
  public OptionalDouble outcome(Outcome outcome) {
    return outcomes.get(outcome.ordinal());
  }

  /**
   * A day of a run.
   *
   * @param date the day
   * @param values one value for each column that was asked for
   */
  @SuppressWarnings("ArrayRecordComponent") // Made by the million; nobody compares them.
  public record BatchDay(LocalDate date, double[] values) {}
}
