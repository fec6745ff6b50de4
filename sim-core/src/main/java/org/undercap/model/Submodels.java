package org.undercap.model;

import java.util.Objects;
import java.util.function.Function;

/**
 * The parts of the day that can be replaced by others. Each part is made once for a block of
 * colonies, from their parameters, and must serve several threads. How temperature changes a
 * treatment is replaced in the treatment itself ({@code TemperatureResponse}).
 *
 * <p>Whatever a rule does, the account of mites must close every day, or the run stops.
 *
 * @param invasion makes the rule by which mites enter cells
 * @param reproduction makes the rule by which they have daughters
 * @param arrivals makes the rule by which mites of neighbours come in
 */
public record Submodels(
    Function<ModelParameters, InvasionRule> invasion,
    Function<ModelParameters, ReproductionRule> reproduction,
    Function<ModelParameters, ArrivalRule> arrivals) {
  private static final Submodels SHIPPED =
      new Submodels(
          InvasionRule::perGramOfBees,
          ReproductionRule::byBroodNest,
          p -> ArrivalRule.whereBeesLive());

  /**
   * Refuses missing parts.
   *
   * @param invasion makes the rule by which mites enter cells
   * @param reproduction makes the rule by which they have daughters
   * @param arrivals makes the rule by which mites of neighbours come in
   */
  public Submodels {
    Objects.requireNonNull(invasion, "invasion");
    Objects.requireNonNull(reproduction, "reproduction");
    Objects.requireNonNull(arrivals, "arrivals");
  }

  /**
   * The parts of the model as it ships.
   *
   * @return all parts
   */
  public static Submodels shipped() {
    return SHIPPED;
  }

  /**
   * These parts with another invasion.
   *
   * @param other makes the rule
   * @return a copy
   */
  public Submodels withInvasion(Function<ModelParameters, InvasionRule> other) {
    return new Submodels(other, reproduction, arrivals);
  }

  /**
   * These parts with another reproduction.
   *
   * @param other makes the rule
   * @return a copy
   */
  public Submodels withReproduction(Function<ModelParameters, ReproductionRule> other) {
    return new Submodels(invasion, other, arrivals);
  }

  /**
   * These parts with other arrivals.
   *
   * @param other makes the rule
   * @return a copy
   */
  public Submodels withArrivals(Function<ModelParameters, ArrivalRule> other) {
    return new Submodels(invasion, reproduction, other);
  }
}
