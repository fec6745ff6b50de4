package org.undercap.cli.chart;

import java.util.List;

/**
 * A label above the plot on one or more poles that stand on it.
 *
 * @param lines words
 * @param poles where the poles stand (points across the page), ascending
 * @param bold whether the words are bold
 */
record Flag(List<String> lines, List<Double> poles, boolean bold) {
  Flag {
    lines = List.copyOf(lines);
    poles = List.copyOf(poles);
  }

  double firstPole() {
    return poles.get(0);
  }

  double lastPole() {
    return poles.get(poles.size() - 1);
  }
}
