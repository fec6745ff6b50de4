package org.undercap.monitoring;

/** What makes an estimate of mites wide. */
public enum WidthSource {
  /** Chance: only some of the bees, cells or falling mites were looked at. */
  SAMPLE("the size of the sample"),
  /** The number of bees is an estimate. */
  BEES("the estimate of the bees"),
  /** The amount of brood is an estimate. */
  BROOD("the estimate of the brood"),
  /** The share of the mites that a wash, a roll or a board finds is not known well. */
  METHOD("the way of counting"),
  /** The strength of a treatment before or between the counts differs from colony to colony. */
  TREATMENT("the strength of the treatment");

  private final String words;

  WidthSource(String words) {
    this.words = words;
  }

  /**
   * What it is, in a few words.
   *
   * @return words that can follow "comes from"
   */
  public String words() {
    return words;
  }
}
