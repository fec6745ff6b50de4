package org.undercap.planning;

import java.time.LocalDate;
import java.util.Optional;
import org.undercap.ensemble.EnsembleSettings;

/**
 * How long a search takes.
 *
 * @param schedules most schedules that are tried
 * @param screening members on which every schedule is tried
 * @param finalists schedules that are tried again on all members
 * @param ensemble all members, seed and threads; the first of them are those of the screening
 * @param from first day on which a treatment may begin; empty for the first day of the scenario
 */
public record SearchSettings(
    int schedules,
    int screening,
    int finalists,
    EnsembleSettings ensemble,
    Optional<LocalDate> from) {
  /** Fewer schedules cannot be shared out over the rounds. */
  public static final int LEAST_SCHEDULES = 30;

  /** Schedules tried unless told otherwise. */
  public static final int USUAL_SCHEDULES = 5000;

  /** Members of the last round unless told otherwise. */
  public static final int USUAL_MEMBERS = 200;

  private static final int USUAL_SCREENING = 32;
  private static final int USUAL_FINALISTS = 100;

  /**
   * Checks the numbers.
   *
   * @param schedules at least 30
   * @param screening at least 1, at most all members
   * @param finalists at least 1
   * @param ensemble all members, seed and threads
   * @param from first day on which a treatment may begin
   * @throws IllegalArgumentException if a number is out of range
   */
  public SearchSettings {
    if (schedules < LEAST_SCHEDULES) {
      throw new IllegalArgumentException(
          "schedules " + schedules + " must be at least " + LEAST_SCHEDULES);
    }
    if (finalists < 1) {
      throw new IllegalArgumentException("finalists " + finalists + " must be at least 1");
    }
    if (screening < 1 || screening > ensemble.members()) {
      throw new IllegalArgumentException(
          "members of the screening " + screening + " must be in 1 to " + ensemble.members());
    }
  }

  /**
   * The usual search.
   *
   * @param schedules most schedules that are tried, at least 30
   * @param ensemble members, seed and threads
   * @return settings
   */
  public static SearchSettings usual(int schedules, EnsembleSettings ensemble) {
    return new SearchSettings(
        schedules,
        Math.min(USUAL_SCREENING, ensemble.members()),
        USUAL_FINALISTS,
        ensemble,
        Optional.empty());
  }

  /**
   * The same with another first day.
   *
   * @param first first day on which a treatment may begin
   * @return settings
   */
  public SearchSettings withFrom(LocalDate first) {
    return new SearchSettings(schedules, screening, finalists, ensemble, Optional.of(first));
  }
}
