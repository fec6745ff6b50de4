package org.undercap.simulation;

import org.undercap.model.Flow;
import org.undercap.model.Part;

/**
 * The columns of a daily table: the state at the start of the day, then what happened on that day.
 */
public enum DailyColumn {
  /** Number of the day, from 0 (days). */
  DAY("day"),
  /** Day of the 365-day year, 1 to 365 (days). */
  DOY("doy"),
  /** Daily mean outside temperature (C). */
  TEMPERATURE("temperature_c"),
  /** Healthy adult workers (bees). */
  ADULTS_HEALTHY("adults_healthy", Part.HEALTHY_ADULTS),
  /** Adult workers that were parasitised under the cappings (bees). */
  ADULTS_WEAKENED("adults_weakened", Part.WEAKENED_ADULTS),
  /** Worker eggs (cells). */
  EGGS_WORKER("eggs_worker", Part.WORKER_EGGS),
  /** Worker larvae (cells). */
  LARVAE_WORKER("larvae_worker", Part.WORKER_LARVAE),
  /** Sealed worker brood (cells). */
  SEALED_WORKER("sealed_worker", Part.SEALED_WORKERS),
  /** Drone eggs (cells). */
  EGGS_DRONE("eggs_drone", Part.DRONE_EGGS),
  /** Drone larvae (cells). */
  LARVAE_DRONE("larvae_drone", Part.DRONE_LARVAE),
  /** Sealed drone brood (cells). */
  SEALED_DRONE("sealed_drone", Part.SEALED_DRONES),
  /** Phoretic mites (mites). */
  MITES_ON_BEES("mites_on_bees", Part.MITES_ON_BEES),
  /** Mother mites in sealed worker cells (mites). */
  MITES_IN_WORKER_CELLS("mites_in_worker_cells", Part.MITES_IN_WORKER_CELLS),
  /** Mother mites in sealed drone cells (mites). */
  MITES_IN_DRONE_CELLS("mites_in_drone_cells", Part.MITES_IN_DRONE_CELLS),
  /** Ageing speed of the workers (1 = summer). */
  AGEING_SPEED("ageing_speed", Flow.AGEING_SPEED),
  /** Brood index (0 to 1). */
  BROOD_INDEX("brood_index", Flow.BROOD_INDEX),
  /** Eggs laid on the day (eggs). */
  EGGS_LAID("eggs_laid", Flow.EGGS_LAID),
  /** Healthy workers emerging on the day (bees). */
  WORKERS_EMERGED_HEALTHY("workers_emerged_healthy", Flow.EMERGED_HEALTHY),
  /** Parasitised workers emerging on the day (bees). */
  WORKERS_EMERGED_WEAKENED("workers_emerged_weakened", Flow.EMERGED_WEAKENED),
  /** Share of the emerging worker cells with at least one mother mite (fraction). */
  PARASITISED_SHARE("parasitised_share_of_emerging_cells", Flow.PARASITISED_SHARE),
  /** Mites that fell when bees emerged (mites per day). */
  MITES_LOST_AT_EMERGENCE("mites_lost_at_emergence", Flow.LOST_AT_EMERGENCE),
  /** Mites that died on the bees by themselves (mites per day). */
  MITES_DIED_NATURALLY("mites_died_naturally", Flow.DIED_NATURALLY),
  /** Mites killed on the bees (mites per day). */
  MITES_KILLED_ON_BEES("mites_killed_on_bees", Flow.KILLED_ON_BEES),
  /** Mites killed under the cappings (mites per day). */
  MITES_KILLED_IN_CELLS("mites_killed_in_cells", Flow.KILLED_IN_CELLS),
  /** Mites that arrived from other colonies (mites per day). */
  MITES_ARRIVED("mites_arrived", Flow.ARRIVED),
  /** Mites taken out by the keeper (mites per day). */
  MITES_REMOVED("mites_removed", Flow.REMOVED);

  private final String header;
  private final Part part;
  private final Flow flow;

  DailyColumn(String header) {
    this(header, null, null);
  }

  DailyColumn(String header, Part part) {
    this(header, part, null);
  }

  DailyColumn(String header, Flow flow) {
    this(header, null, flow);
  }

  DailyColumn(String header, Part part, Flow flow) {
    this.header = header;
    this.part = part;
    this.flow = flow;
  }

  /**
   * Name of the column in files.
   *
   * @return the header
   */
  public String header() {
    return header;
  }

  /**
   * Value at the start of a day.
   *
   * @param day the day, at its start
   * @param lane the colony
   * @return the value; NaN for what is known at the end of the day only
   */
  public double atStart(SimulationDay day, int lane) {
    return switch (this) {
      case DAY -> day.index();
      case DOY -> day.seasonDay();
      case TEMPERATURE -> day.temperature(lane);
      default -> part == null ? Double.NaN : day.colony().total(part, lane);
    };
  }

  /**
   * Whether it is what happened on the day, known at its end, and not the state at its start.
   *
   * @return true if it is a flow
   */
  public boolean isFlow() {
    return flow != null;
  }

  /**
   * Value of a flow at the end of a day.
   *
   * @param day the day, at its end
   * @param lane the colony
   * @return the value
   */
  public double atEnd(SimulationDay day, int lane) {
    return day.flows().of(flow, lane);
  }
}
