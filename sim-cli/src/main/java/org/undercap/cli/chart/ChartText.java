package org.undercap.cli.chart;

/** The words of a chart. Only what the reader must know; each in one sentence. */
public record ChartText(
    String title, String subtitle, String finding, String limit, String alternative) {

  /**
   * Checks that nothing needed is missing.
   *
   * @param title what is shown, printed below the finding
   * @param subtitle place, colony and date, printed after the title; may be empty
   * @param finding what the reader learns, printed on top in bold
   * @param limit what the chart cannot tell, printed at the bottom
   * @param alternative what a reader who cannot see the chart needs to hear; part of an SVG file
   * @throws IllegalArgumentException if a text other than the subtitle is blank
   */
  public ChartText {
    require("title", title);
    require("finding", finding);
    require("limit", limit);
    require("alternative", alternative);
    subtitle = subtitle.strip();
  }

  private static void require(String name, String text) {
    if (text.isBlank()) {
      throw new IllegalArgumentException("chart needs a " + name);
    }
  }
}
