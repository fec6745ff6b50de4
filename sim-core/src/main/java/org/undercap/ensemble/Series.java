package org.undercap.ensemble;

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
}
