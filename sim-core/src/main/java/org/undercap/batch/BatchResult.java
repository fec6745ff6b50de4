package org.undercap.batch;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.undercap.ensemble.Outcome;

/** What came of a run of a batch. */
public record BatchResult(
    BatchRow row,
    Optional<String> problem,
    Optional<LocalDate> lostOn,
    Map<Outcome, Double> outcomes,
    List<BatchDay> days) {

  /**
   * Copies the lists.
   *
   * @param row the run
   * @param problem why it could not be run, as of a colony that cannot live in the climate
   * @param lostOn day on which the colony was lost
   * @param outcomes the outcomes that the run tells; none if there is a problem
   * @param days the days that were asked for
   */
  public BatchResult {
    outcomes = Map.copyOf(outcomes);
    days = List.copyOf(days);
  }

  /** A run that could not be run. */
  static BatchResult failed(BatchRow row, String why) {
    return new BatchResult(row, Optional.of(why), Optional.empty(), Map.of(), List.of());
  }

  /**
   * One outcome.
   *
   * @param outcome which
   * @return its value, if the run tells it; unit as {@link Outcome} says
   */
  public OptionalDouble outcome(Outcome outcome) {
    Double value = outcomes.get(outcome);
    return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
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
