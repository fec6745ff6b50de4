package org.undercap.cli.chart;

import java.awt.BasicStroke;

/** How a line is broken, so that lines differ without colour. */
@SuppressWarnings("ImmutableEnumChecker") // the pattern is never handed out
public enum Dash {
  /** Unbroken. */
  SOLID,
  /** Long dashes. */
  DASHED(5f, 2.6f),
  /** Dots. */
  DOTTED(0.1f, 2.2f),
  /** Dash and dot in turn. */
  DASH_DOT(5f, 2.4f, 0.1f, 2.4f),
  /** A long dash and two dots in turn. */
  DASH_DOT_DOT(8f, 2.2f, 0.1f, 2.2f, 0.1f, 2.2f);

  private final float[] pattern;

  Dash(float... pattern) {
    this.pattern = pattern;
  }

  /** A pen of this dash and of a width in points; the pattern grows with the width. */
  BasicStroke stroke(double width) {
    float pen = (float) width;
    if (pattern.length == 0) {
      return new BasicStroke(pen, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    }
    float[] lengths = new float[pattern.length];
    for (int i = 0; i < lengths.length; i++) {
      lengths[i] = pattern[i] * pen;
    }
    int cap = this == DASHED ? BasicStroke.CAP_BUTT : BasicStroke.CAP_ROUND;
    return new BasicStroke(pen, cap, BasicStroke.JOIN_ROUND, 10f, lengths, 0f);
  }
}
