package org.undercap.monitoring;

/** What a reader of an estimate must know before using it. */
public enum EstimateWarning {
  /** A sample of fewer than 100 bees. */
  SMALL_SAMPLE("a sample of fewer than 100 bees says little"),
  /** No mites at all were found: the counts give an upper limit only. */
  NOTHING_FOUND("no mites were found: only the upper limit of the estimate means something"),
  /** The counts do not fit one colony: one of them is hardly possible if the others are right. */
  CONFLICT("the counts contradict each other: one of them is hardly possible beside the others"),
  /** More mites would give the same count: the counts give a lower limit only. */
  SATURATED("so many mites were found that only the lower limit of the estimate means something"),
  /** Cells were opened in a season in which the model knows no such sealed brood. */
  NO_SUCH_BROOD("a count of opened cells is left out: the model has no such brood on that day");

  private final String words;

  EstimateWarning(String words) {
    this.words = words;
  }

  /**
   * The warning in a sentence.
   *
   * @return words without a full stop
   */
  public String words() {
    return words;
  }
}
