package org.undercap.cli.chart;

/** The three kinds of letters on a chart. */
record Letters(Lettering text, Lettering bold, Lettering headline) {
  static Letters of(ChartStyle style) {
    return new Letters(
        Lettering.regular(style.textSize()),
        Lettering.bold(style.textSize()),
        Lettering.bold(style.headlineSize()));
  }
}
