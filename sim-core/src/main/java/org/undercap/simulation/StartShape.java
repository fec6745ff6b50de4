package org.undercap.simulation;

import static org.undercap.parameter.ParameterId.START_ADULTS;
import static org.undercap.parameter.ParameterId.START_HEALTHY_DAYS;
import static org.undercap.parameter.ParameterId.START_MITES;
import static org.undercap.parameter.ParameterId.START_MITE_DAYS;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.undercap.climate.Climate;
import org.undercap.climate.SeasonDay;
import org.undercap.model.ColonyLanes;
import org.undercap.model.ModelParameters;
import org.undercap.model.Part;
import org.undercap.model.Submodels;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;

/**
 * The shape of a colony on a day of the year: ages of bees and brood, and the share of the mites
 * under the cappings.
 *
 * <p>A healthy colony is run for two years in the usual weather of the climate until 60 days before
 * the day; then 10 mites are put on its bees and it is run for the 60 days. {@link
 * ColonyLanes#scaleTo} and {@link ColonyLanes#scaleMites} bring it to the numbers of a real colony.
 * No mites arrive meanwhile. (All numbers are parameters named {@code start...}.) Safe for several
 * threads.
 */
public final class StartShape {
  private static final int FIRST_DAY = 1;

  /** Parameters that change nothing in a colony without mites. */
  private static final Set<ParameterId> MITES_ONLY =
      EnumSet.of(
          ParameterId.INVASION_WORKER,
          ParameterId.INVASION_DRONE,
          ParameterId.REPRODUCTION_WORKER,
          ParameterId.REPRODUCTION_DRONE,
          ParameterId.REPRODUCTION_WINTER_FACTOR,
          ParameterId.EMERGENCE_LOSS_MOTHER_WORKER,
          ParameterId.EMERGENCE_LOSS_DAUGHTER_WORKER,
          ParameterId.EMERGENCE_LOSS_MOTHER_DRONE,
          ParameterId.EMERGENCE_LOSS_DAUGHTER_DRONE,
          ParameterId.MITE_DEATH_BROOD_NEST,
          ParameterId.MITE_DEATH_BROODLESS,
          ParameterId.ADULT_WEIGHT);

  private final Climate climate;
  private final int seasonDay;
  private final ParameterSet base;
  private ColonyLanes healthy;

  /**
   * The shapes of a day in a place, for colonies that differ little.
   *
   * @param climate place; its usual weather is used
   * @param seasonDay day of the 365-day year, 1 to 365
   * @param base parameters around which those of the colonies lie
   * @throws IllegalArgumentException if the day is out of range
   */
  public StartShape(Climate climate, int seasonDay, ParameterSet base) {
    if (seasonDay < 1 || seasonDay > SeasonDay.DAYS) {
      throw new IllegalArgumentException(
          "day of the year " + seasonDay + " must be in 1 to " + SeasonDay.DAYS);
    }
    this.climate = climate;
    this.seasonDay = seasonDay;
    this.base = base;
  }

  /**
   * The shapes of a day in a place, which are these if day, place and parameters are the same: a
   * healthy colony that was run already need not be run again.
   *
   * @param otherClimate place
   * @param otherDay day of the 365-day year, 1 to 365
   * @param otherBase parameters around which those of the colonies lie
   * @return these shapes, or new ones
   * @throws IllegalArgumentException if the day is out of range
   */
  @SuppressWarnings("ReferenceEquality") // the same object is quicker to see than the same values
  public StartShape on(Climate otherClimate, int otherDay, ParameterSet otherBase) {
    boolean same = climate.equals(otherClimate) && seasonDay == otherDay && base.equals(otherBase);
    return same ? this : new StartShape(otherClimate, otherDay, otherBase);
  }

  /**
   * The shape on a day of the year.
   *
   * @param climate place; its usual weather is used
   * @param seasonDay day of the 365-day year, 1 to 365
   * @param parameters one set a colony
   * @return colonies with few mites, to be scaled
   * @throws IllegalArgumentException if the day is out of range, or a colony does not live in this
   *     climate
   */
  public static ColonyLanes at(Climate climate, int seasonDay, ModelParameters parameters) {
    return new StartShape(climate, seasonDay, parameters.first()).of(parameters);
  }

  /**
   * The shape with some parameters.
   *
   * @param parameters one set a colony
   * @return colonies with few mites, to be scaled
   * @throws IllegalArgumentException if a colony does not live in this climate
   */
  public ColonyLanes of(ModelParameters parameters) {
    ParameterSet first = parameters.first();
    int miteDays = (int) first.value(START_MITE_DAYS);
    int healthyDays = (int) first.value(START_HEALTHY_DAYS) + seasonDay - miteDays - FIRST_DAY;
    if (seasonDay - miteDays < FIRST_DAY) {
      healthyDays += SeasonDay.DAYS;
    }
    ColonyLanes colonies = healthy(healthyDays, parameters);
    for (int lane = 0; lane < colonies.lanes(); lane++) {
      colonies.addMitesOnBees(lane, first.value(START_MITES));
    }
    return run(climate, healthyDays % SeasonDay.DAYS + 1, miteDays, colonies, parameters);
  }

  /**
   * Without mites, colonies that differ in mite parameters only are all the same: one is enough,
   * and its run serves all that are asked for.
   */
  private ColonyLanes healthy(int days, ModelParameters parameters) {
    boolean same =
        parameters.agreeBeside(MITES_ONLY)
            && ModelParameters.of(List.of(base, parameters.first())).agreeBeside(MITES_ONLY);
    return same
        ? ofBase(days).copies(0, parameters.lanes())
        : run(climate, FIRST_DAY, days, beginning(parameters), parameters);
  }

  private synchronized ColonyLanes ofBase(int days) {
    if (healthy == null) {
      ModelParameters one = ModelParameters.of(base);
      healthy = run(climate, FIRST_DAY, days, beginning(one), one);
    }
    return healthy;
  }

  private static ColonyLanes beginning(ModelParameters parameters) {
    ParameterSet first = parameters.first();
    ColonyLanes colony = ColonyLanes.empty(parameters);
    double[] stages = new double[(int) first.value(ParameterId.ADULT_LIFE_STAGES)];
    Arrays.fill(stages, first.value(START_ADULTS) / stages.length);
    for (int lane = 0; lane < colony.lanes(); lane++) {
      colony.set(Part.HEALTHY_ADULTS, lane, stages);
    }
    return colony;
  }

  private static ColonyLanes run(
      Climate climate, int from, int days, ColonyLanes start, ModelParameters parameters) {
    DailyDrivers drivers = DailyDrivers.ofSeason(climate, from, days, parameters.lanes());
    Submodels alone = parameters.submodels().withArrivals(Submodels.shipped().arrivals());
    Simulator.RunEnd end =
        new Simulator(parameters.with(alone), drivers).run(start, List.of(), List.of());
    for (int lane = 0; lane < parameters.lanes(); lane++) {
      if (end.lostOn(lane) >= 0) {
        throw new IllegalArgumentException(
            "a healthy colony does not live through two years in climate "
                + climate.id()
                + " with these parameters");
      }
    }
    return end.colony();
  }
}
