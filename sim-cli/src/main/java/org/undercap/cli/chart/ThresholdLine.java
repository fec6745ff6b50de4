package org.undercap.cli.chart;

/** A limit at which to act, drawn as a level line with its words and its source. */
public record ThresholdLine(double mitesPer100Bees, String words, String source) {

  /**
   * Checks the values.
   *
   * @param mitesPer100Bees the limit (mites per 100 bees), finite and more than 0
   * @param words what the limit says, with its season, as in {@code treat in August}
   * @param source who gives it, as in {@code author, year}
   * @throws IllegalArgumentException if the limit is not finite and more than 0, or a text is blank
   */
  public ThresholdLine {
    if (!(mitesPer100Bees > 0 && mitesPer100Bees < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "threshold " + mitesPer100Bees + " must be finite and more than 0 (mites per 100 bees)");
    }
    if (words.isBlank() || source.isBlank()) {
      throw new IllegalArgumentException("threshold needs words and a source");
    }
  }

  /** The line of text that is written on the chart. */
  String label() {
    return words + " (" + source + ")";
  }
}
