package org.undercap.ensemble;

import org.undercap.model.Part;
import org.undercap.simulation.SimulationDay;

/** Curves of which bands over the members are kept, at the start of each day. */
public enum Series {
  /** Phoretic mites (mites). */
  MITES_ON_BEES("mites_on_bees"),
  /** Mother mites under the cappings (mites). */
  MITES_IN_CELLS("mites_in_cells"),
  /** Phoretic mites for each 100 bees (mites per 100 bees). */
  MITES_PER_100_BEES("mites_per_100_bees"),
  /** Adult workers (bees). */
  ADULTS("adults");

  private final String header;

  Series(String header) {
    this.header = header;
  }

  /**
   * Name of the series in files, with its unit.
   *
   * @return the name
   */
  public String header() {
    return header;
  }

  double at(SimulationDay day, int lane, double adults, double mites) {
    double onBees = day.colony().total(Part.MITES_ON_BEES, lane);
    return switch (this) {
      case MITES_ON_BEES -> onBees;
      case MITES_IN_CELLS -> Math.max(0, mites - onBees);
      case MITES_PER_100_BEES -> adults > 0 ? 100 * onBees / adults : 0;
      case ADULTS -> adults;
    };
  }
}
