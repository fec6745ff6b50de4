package org.undercap.scenario;

import java.util.OptionalDouble;
import org.undercap.internal.Checks;

/**
 * What a keeper can spend on one colony in a plan.
 *
 * @param cost most of the user's money; empty if the user names no limit
 * @param minutes most of the keeper's time (minutes); empty if the user names no limit
 */
public record WorkLimits(OptionalDouble cost, OptionalDouble minutes) {
  /** No limits. */
  public static final WorkLimits NONE =
      new WorkLimits(OptionalDouble.empty(), OptionalDouble.empty());

  /**
   * Checks the numbers.
   *
   * @param cost at least 0 (in the user's money)
   * @param minutes at least 0 (minutes)
   * @throws IllegalArgumentException if a number is out of range
   */
  public WorkLimits {
    cost.ifPresent(most -> Checks.notNegative(most, "limit of cost"));
    minutes.ifPresent(most -> Checks.notNegative(most, "limit of time (minutes)"));
  }
}
