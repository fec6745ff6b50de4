package org.undercap.cli.chart;

/** Sizes of charts for one medium. One point is 1/72 inch on paper. */
public record ChartStyle(
    String name,
    double width,
    double chartHeight,
    double pageHeight,
    float textSize,
    float headlineSize,
    double lineWidth,
    int columns,
    int dotsPerInch) {

  /** Fills the text width of A4 paper (175 mm); letters of 10 points. */
  public static final ChartStyle A4 = new ChartStyle("A4", 496, 350, 728, 10, 13, 2, 1, 150);

  /** Fills the text width of Letter paper (7.1 inches); letters of 10 points. */
  public static final ChartStyle LETTER =
      new ChartStyle("Letter", 511, 350, 677, 10, 13, 2, 1, 150);

  /** A slide of 1920 by 1080 dots; letters of 18 points. */
  public static final ChartStyle SLIDE =
      new ChartStyle("slide", 960, 540, 540, 18, 24, 3.4, 2, 144);

  /** A frame of a moving picture, small enough to be sent by mail. */
  public static final ChartStyle FILM = new ChartStyle("film", 560, 320, 320, 12, 14, 2, 1, 84);

  /** Letters below this size cannot be read on paper (points). */
  private static final double SMALLEST_TEXT = 10;

  /**
   * Checks the sizes.
   *
   * @param name what the style is for
   * @param width width of every chart (points), at least 30 letters
   * @param chartHeight height of a chart with one plot (points), at least 15 lines of text
   * @param pageHeight largest height of a chart with several panels (points), at least {@code
   *     chartHeight}
   * @param textSize size of all letters but the headline (points), at least 10
   * @param headlineSize size of the letters of the finding (points), at least {@code textSize}
   * @param lineWidth width of curves (points), at least 0.1
   * @param columns panels beside each other in a comparison, at least 1
   * @param dotsPerInch resolution of bitmaps (dots per inch), 72 to 600
   * @throws IllegalArgumentException if a size is outside its range
   */
  public ChartStyle {
    atLeast("text size", textSize, SMALLEST_TEXT);
    atLeast("headline size", headlineSize, textSize);
    atLeast("width", width, 30 * textSize);
    atLeast("chart height", chartHeight, 15 * textSize);
    atLeast("page height", pageHeight, chartHeight);
    atLeast("line width", lineWidth, 0.1);
    atLeast("columns", columns, 1);
    if (!(dotsPerInch >= 72 && dotsPerInch <= 600)) {
      throw new IllegalArgumentException("resolution " + dotsPerInch + " must be in [72, 600] dpi");
    }
  }

  private static void atLeast(String name, double value, double least) {
    if (!(value >= least && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(name + " " + value + " must be at least " + least);
    }
  }
}
