package org.undercap.monitoring;

import org.undercap.parameter.ParameterId;

/** How the mites were taken off the bees of a sample. */
public enum WashMethod {
  /** Bees washed in alcohol. */
  ALCOHOL("alcohol", ParameterId.COUNT_RECOVERY_WASH),
  /** Bees washed in soapy water. */
  SOAP("soap", ParameterId.COUNT_RECOVERY_WASH),
  /** Bees rolled in powdered sugar. */
  SUGAR("sugar", ParameterId.COUNT_RECOVERY_ROLL);

  private final String id;
  private final ParameterId recovery;

  WashMethod(String id, ParameterId recovery) {
    this.id = id;
    this.recovery = recovery;
  }

  /**
   * The name in files.
   *
   * @return one word
   */
  public String id() {
    return id;
  }

  /**
   * Which parameter holds the share of the mites on the sampled bees that are found.
   *
   * @return a parameter (fraction)
   */
  public ParameterId recovery() {
    return recovery;
  }
}
