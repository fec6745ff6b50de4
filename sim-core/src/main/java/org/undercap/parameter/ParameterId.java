package org.undercap.parameter;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.undercap.internal.Nearest;

/**
 * Identity of a parameter. Values, ranges and sources stand in {@link ParameterCatalogue}; a
 * parameter with several values is read with {@link ParameterSet#values(ParameterId)}.
 */
public enum ParameterId {
  /** Hazard of invasion per worker cell sealed per gram of bees (g per cell). */
  INVASION_WORKER("invasion.worker", Domain.NOT_NEGATIVE),
  /** Hazard of invasion per drone cell sealed per gram of bees (g per cell). */
  INVASION_DRONE("invasion.drone", Domain.NOT_NEGATIVE),
  /** Daughters of a mother mite in a worker cell (daughters per invading mother). */
  REPRODUCTION_WORKER("reproduction.worker", Domain.NOT_NEGATIVE),
  /** Daughters of a mother mite in a drone cell (daughters per invading mother). */
  REPRODUCTION_DRONE("reproduction.drone", Domain.NOT_NEGATIVE),
  /** Reproduction in winter brood relative to summer brood (ratio). */
  REPRODUCTION_WINTER_FACTOR("reproduction.winterFactor", Domain.NOT_NEGATIVE),
  /**
   * Daughters per mother when 1, 2, 3, ... mothers share a worker cell, relative to one (ratio).
   */
  CROWDING_WORKER("crowding.worker", Domain.NOT_NEGATIVE),
  /** Daughters per mother when 1, 2, 3, ... mothers share a drone cell, relative to one (ratio). */
  CROWDING_DRONE("crowding.drone", Domain.NOT_NEGATIVE),
  /** Dispersion of mothers over worker cells; infinity means Poisson (no unit). */
  DISPERSION_WORKER("dispersion.worker", Domain.POSITIVE_OR_INFINITE),
  /** Dispersion of mothers over drone cells; infinity means Poisson (no unit). */
  DISPERSION_DRONE("dispersion.drone", Domain.POSITIVE_OR_INFINITE),
  /** Share of mothers lost when a worker emerges (fraction). */
  EMERGENCE_LOSS_MOTHER_WORKER("emergence.loss.mother.worker", Domain.FRACTION),
  /** Share of daughters lost when a worker emerges (fraction). */
  EMERGENCE_LOSS_DAUGHTER_WORKER("emergence.loss.daughter.worker", Domain.FRACTION),
  /** Share of mothers lost when a drone emerges (fraction). */
  EMERGENCE_LOSS_MOTHER_DRONE("emergence.loss.mother.drone", Domain.FRACTION),
  /** Share of daughters lost when a drone emerges (fraction). */
  EMERGENCE_LOSS_DAUGHTER_DRONE("emergence.loss.daughter.drone", Domain.FRACTION),
  /** Natural death of phoretic mites beside a full brood nest (per day). */
  MITE_DEATH_BROOD_NEST("mite.death.broodNest", Domain.NOT_NEGATIVE),
  /** Natural death of phoretic mites without brood (per day). */
  MITE_DEATH_BROODLESS("mite.death.broodless", Domain.NOT_NEGATIVE),
  /** Duration of egg, larva and sealed brood of workers (days egg;larva;sealed). */
  BROOD_WORKER_DAYS("brood.worker.days", Domain.COUNT),
  /** Duration of egg, larva and sealed brood of drones (days egg;larva;sealed). */
  BROOD_DRONE_DAYS("brood.drone.days", Domain.COUNT),
  /** Share of eggs that hatch (fraction). */
  BROOD_SURVIVAL_EGG("brood.survival.egg", Domain.FRACTION),
  /** Share of larvae that are sealed (fraction). */
  BROOD_SURVIVAL_LARVA("brood.survival.larva", Domain.FRACTION),
  /** Share of sealed cells that emerge (fraction). */
  BROOD_SURVIVAL_SEALED("brood.survival.sealed", Domain.FRACTION),
  /** Mean adult life at ageing speed 1 (days at ageing speed 1). */
  ADULT_LIFE_SUMMER("adult.life.summer", Domain.POSITIVE),
  /** Stages of the chain that makes the spread of adult life (stages). */
  ADULT_LIFE_STAGES("adult.life.stages", Domain.COUNT),
  /** Ageing speed without brood and flight (per day). */
  AGEING_MINIMUM("ageing.minimum", Domain.FRACTION),
  /** Part of the further ageing that goes with brood rather than flight (ratio). */
  AGEING_BROOD_WEIGHT("ageing.broodWeight", Domain.FRACTION),
  /** Open larvae per adult at which the brood index is 1 (open larvae per adult). */
  AGEING_BROOD_INDEX_FULL("ageing.broodIndexFull", Domain.POSITIVE),
  /** Day temperature at which flight begins (C). */
  AGEING_FLIGHT_LOW("ageing.flight.low", Domain.ANY),
  /** Day temperature at which flight is full (C). */
  AGEING_FLIGHT_HIGH("ageing.flight.high", Domain.ANY),
  /** Adults at which half of the potential eggs are reared (adults). */
  LAYING_HALF_SATURATION("laying.halfSaturation", Domain.POSITIVE),
  /** Weight of an adult worker (g). */
  ADULT_WEIGHT("adult.weight", Domain.POSITIVE),
  /** Death of pupae with one mother in the cell (fraction). */
  PARASITISED_PUPA_DEATH_ONE("parasitised.pupaDeath.one", Domain.FRACTION),
  /** Death of pupae with several mothers in the cell (fraction). */
  PARASITISED_PUPA_DEATH_SEVERAL("parasitised.pupaDeath.several", Domain.FRACTION),
  /** Ageing of weakened workers relative to healthy ones (ratio). */
  PARASITISED_AGEING("parasitised.ageing", Domain.NOT_NEGATIVE),
  /** Least ageing speed of weakened workers (per day). */
  PARASITISED_AGEING_FLOOR("parasitised.ageingFloor", Domain.NOT_NEGATIVE),
  /** Adults up to which no drone eggs are laid (adults). */
  DRONES_SIZE_LOW("drones.sizeLow", Domain.NOT_NEGATIVE),
  /** Adults from which the full share of drone eggs is laid (adults). */
  DRONES_SIZE_HIGH("drones.sizeHigh", Domain.NOT_NEGATIVE),
  /** Death of adult drones (per day). */
  DRONE_DEATH("drone.death", Domain.NOT_NEGATIVE),
  /** Constants A, B, C of the vapour pressure ln p = A - B/(K - C) of thymol (ln Pa;K;K). */
  THYMOL_VAPOUR("thymol.vapour", Domain.POSITIVE),
  /** Constants A, B, C of the vapour pressure ln p = A - B/(K - C) of formic acid (ln Pa;K;K). */
  FORMIC_VAPOUR("formic.vapour", Domain.POSITIVE),
  /** Thymol in hive air at half effect (ug per L). */
  THYMOL_TARGET("thymol.target", Domain.POSITIVE),
  /** Strength of a treatment in a colony relative to the method (ratio of the hazard). */
  TREATMENT_STRENGTH("treatment.strength", Domain.POSITIVE),
  /** Share of mites on the bees that a wash finds (fraction). */
  COUNT_RECOVERY_WASH("count.recovery.wash", Domain.FRACTION),
  /** Share of mites on the bees that a sugar roll finds (fraction). */
  COUNT_RECOVERY_ROLL("count.recovery.roll", Domain.FRACTION),
  /** Share of the falling mites that a board catches (fraction). */
  COUNT_CAPTURE_BOARD("count.capture.board", Domain.FRACTION),
  /** Spread of the mites per bee among the places of a hive where bees are taken (ratio). */
  COUNT_SPREAD_WASH("count.spread.wash", Domain.NOT_NEGATIVE),
  /** Spread of the mite fall around that of the model, beyond chance (ratio). */
  COUNT_SPREAD_BOARD("count.spread.board", Domain.NOT_NEGATIVE),
  /** Area of comb that keepers call a hand (dm2). */
  HAND_AREA("hand.area", Domain.POSITIVE),
  /** Adults below which a colony is lost on a cold day (adults). */
  LOST_ADULTS_COLD("lost.adultsCold", Domain.NOT_NEGATIVE),
  /** Adults below which a colony is lost on any day (adults). */
  LOST_ADULTS_WARM("lost.adultsWarm", Domain.NOT_NEGATIVE),
  /** Day temperature below which a day is cold for the loss of a colony (C). */
  LOST_COLD_BELOW("lost.coldBelow", Domain.ANY),
  /** Temperature of the brood nest (C). */
  HIVE_TEMPERATURE("hive.temperature", Domain.ANY),
  /** Vapour left in a hive on an open floor (ratio). */
  FLOOR_OPEN_FACTOR("floor.openFactor", Domain.NOT_NEGATIVE),
  /** Laying after a shook swarm relative to usual (ratio). */
  SHOOK_SWARM_LAYING_FACTOR("shookSwarm.layingFactor", Domain.NOT_NEGATIVE),
  /** Duration of the reduced laying after a shook swarm (days). */
  SHOOK_SWARM_DAYS("shookSwarm.days", Domain.WHOLE),
  /** Potential laying kept up by late feeding (fraction of the yearly peak). */
  FEEDING_LAYING_SHARE("feeding.layingShare", Domain.FRACTION),
  /** Duration of the effect after a day of feeding (days). */
  FEEDING_DAYS_AFTER("feeding.daysAfter", Domain.WHOLE),
  /** Day temperature above which late feeding has an effect (C). */
  FEEDING_TEMPERATURE_LOW("feeding.temperatureLow", Domain.ANY),
  /** Warmth above that at which the effect of feeding is full (C). */
  FEEDING_TEMPERATURE_SPAN("feeding.temperatureSpan", Domain.POSITIVE),
  /** Adults from which the shape of a start state is grown (adults). */
  START_ADULTS("start.adults", Domain.POSITIVE),
  /** Run without mites that makes the shape of a start state (days). */
  START_HEALTHY_DAYS("start.healthyDays", Domain.WHOLE),
  /** Run with mites that makes the shape of a start state (days). */
  START_MITE_DAYS("start.miteDays", Domain.COUNT),
  /** Mites put on the bees at the begin of the run with mites (mites). */
  START_MITES("start.mites", Domain.POSITIVE),
  /** Bees and brood of a colony relative to the estimate (ratio). */
  COLONY_SIZE("colony.size", Domain.POSITIVE),
  /** Warmth of a season above the climate (C). */
  WEATHER_OFFSET("weather.offset", Domain.ANY),
  /** Warmth of a day above the season (C). */
  WEATHER_DAILY("weather.daily", Domain.ANY),
  /** Correlation of the weather of successive days (fraction). */
  WEATHER_PERSISTENCE("weather.persistence", Domain.FRACTION),
  /** Arrivals at a colony relative to the level (ratio). */
  ARRIVALS_SPREAD("arrivals.spread", Domain.POSITIVE),
  /** Laying below which no more winter bees are reared (fraction of the yearly peak). */
  WINTER_BEES_LAYING_SHARE("winterBees.layingShare", Domain.FRACTION),
  /** Time before that in which winter bees emerge (days). */
  WINTER_BEES_DAYS("winterBees.days", Domain.WHOLE),
  /** First day of winter bee rearing where laying never falls low (day of the northern year). */
  WINTER_BEES_DEFAULT_FROM("winterBees.defaultFrom", Domain.WHOLE),
  /** Last day of winter bee rearing where laying never falls low (day of the northern year). */
  WINTER_BEES_DEFAULT_UNTIL("winterBees.defaultUntil", Domain.WHOLE),
  /** Days of winter bee rearing that must be left to be looked at (days). */
  WINTER_BEES_LEAST("winterBees.least", Domain.WHOLE),
  /** Midwinter (day of the northern year). */
  SEASON_MIDWINTER("season.midwinter", Domain.WHOLE),
  /** End of winter (day of the northern year). */
  SEASON_END_OF_WINTER("season.endOfWinter", Domain.WHOLE),
  /** Harm to winter bees that plans are told apart by (fraction). */
  RANKING_HARM_STEP("ranking.harmStep", Domain.FRACTION),
  /** Losses of colonies that plans are told apart by (fraction). */
  RANKING_LOSS_STEP("ranking.lossStep", Domain.FRACTION),
  /** Uses of a class of substances in a row before it should rest (times). */
  ROTATION_MOST_TIMES("rotation.mostTimes", Domain.COUNT),
  /** Share of a treatment's days that must lie within its temperatures (fraction). */
  ADVICE_TEMPERATURE_DAYS("advice.temperatureDays", Domain.FRACTION),
  /** Treatments further apart are courses of their own (days). */
  ADVICE_COURSE_GAP("advice.courseGap", Domain.WHOLE),
  /** Days after the end of a course at which mites are counted again (days). */
  ADVICE_RECHECK_DAYS("advice.recheckDays", Domain.WHOLE),
  /** Harm above that of the best start date that still counts as in time (fraction). */
  TIMING_TOLERANCE("timing.tolerance", Domain.FRACTION),
  /** Share of the benefit of the best start date that a start in time must keep (fraction). */
  TIMING_KEPT("timing.kept", Domain.FRACTION),
  /** Brood cells below which a colony counts as broodless for oxalic acid (cells). */
  TIMING_BROODLESS("timing.broodless", Domain.NOT_NEGATIVE),
  /** Chance of no brood above which a date counts as broodless (fraction). */
  TIMING_BROODLESS_CHANCE("timing.broodlessChance", Domain.FRACTION),
  /** Courses of one class of substances in a season (courses). */
  PLANNING_CLASS_MOST("planning.classMost", Domain.COUNT),
  /** Mites left that no keeper would tell apart (ratio). */
  PLANNING_MITES_STEP("planning.mitesStep", Domain.POSITIVE),
  /** Least days between the end of one course and the begin of the next in a search (days). */
  PLANNING_COURSE_GAP("planning.courseGap", Domain.WHOLE),
  /** Keeper's time for caging a queen and freeing her (minutes). */
  WORK_QUEEN_CAGING("work.queenCaging", Domain.NOT_NEGATIVE),
  /** Keeper's time for taking a queen away and giving another (minutes). */
  WORK_REQUEENING("work.requeening", Domain.NOT_NEGATIVE),
  /** Keeper's time for one removal of drone comb (minutes). */
  WORK_DRONE_COMB("work.droneComb", Domain.NOT_NEGATIVE),
  /** Keeper's time for one removal of brood combs (minutes). */
  WORK_BROOD_REMOVAL("work.broodRemoval", Domain.NOT_NEGATIVE),
  /** Keeper's time for one shook swarm (minutes). */
  WORK_SHOOK_SWARM("work.shookSwarm", Domain.NOT_NEGATIVE),
  /** Keeper's time for one split (minutes). */
  WORK_SPLIT("work.split", Domain.NOT_NEGATIVE),
  /** Limit where the user names none (mites per 100 bees). */
  THRESHOLD_USUAL("threshold.usual", Domain.POSITIVE),
  /** Winter loss of colonies without mites (fraction). */
  WINTER_RISK_BACKGROUND("winterRisk.background", Domain.FRACTION),
  /** October infestation at which half of the other colonies are lost (mites per 100 bees). */
  WINTER_RISK_HALF("winterRisk.half", Domain.POSITIVE),
  /** Steepness of winter loss against infestation (exponent). */
  WINTER_RISK_SLOPE("winterRisk.slope", Domain.POSITIVE);

  private static final Map<String, ParameterId> BY_ID = new LinkedHashMap<>();

  static {
    for (ParameterId parameter : values()) {
      BY_ID.put(parameter.id, parameter);
    }
  }

  private final String id;
  private final Domain domain;

  ParameterId(String id, Domain domain) {
    this.id = id;
    this.domain = domain;
  }

  /**
   * The dotted name used in files, as in {@code invasion.worker}.
   *
   * @return the name
   */
  public String id() {
    return id;
  }

  /**
   * The numbers that make sense for this parameter at all.
   *
   * @return the domain of each of its values
   */
  public Domain domain() {
    return domain;
  }

  /**
   * The parameter of a dotted name.
   *
   * @param id dotted name
   * @return the parameter
   * @throws IllegalArgumentException if the name is unknown; the message suggests the nearest
   */
  public static ParameterId of(String id) {
    ParameterId found = BY_ID.get(id);
    if (found == null) {
      throw Nearest.unknown("parameter", id, BY_ID.keySet());
    }
    return found;
  }

  /**
   * Checks values against the domain.
   *
   * @param values values in the unit of the parameter
   * @throws IllegalArgumentException if one lies outside; the message names parameter and value
   */
  void check(List<Double> values) {
    for (double value : values) {
      if (!domain.accepts(value)) {
        throw new IllegalArgumentException(
            id + " is " + value + "; each value must be " + domain.accepted());
      }
    }
  }
}
