package org.undercap.cli.chart;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Where the plots of a teaching chart stand: below each other on paper, beside each other on
 * slides.
 */
final class TeachingLayout {
  private static final double HEADROOM = 1.04;
  private static final int MOST_STEPS = 5;
  private static final int MOST_STEPS_OF_MANY = 3;

  /** Height of a chart with plots below each other, in that of one plot (ratio). */
  private static final double STACKED = 1.2;

  /** Rounds until the width of heads and that of plots agree. */
  private static final int ROUNDS = 4;

  private final ChartStyle style;
  private final Letters letters;
  private final PageFrame frame;
  private final SampleRow key;
  private final Set<String> keyed;
  private final List<PlotBox> boxes = new ArrayList<>();
  private int barLines;
  private final double height;

  TeachingLayout(List<Plot> plots, ChartText text, ChartStyle style, Set<String> keyed) {
    this.style = style;
    this.keyed = keyed;
    letters = Letters.of(style);
    frame = new PageFrame(style, letters, text, "");
    boolean beside = plots.size() > 1 && (style.columns() > 1 || plots.get(0) instanceof BarPlot);
    double width = frame.right() - frame.left();
    double gap = 1.4 * style.textSize();
    int columns = beside ? plots.size() : 1;
    double headRoom =
        beside && plots.get(0) instanceof BarPlot bars
            ? headRoom(bars, width - (columns - 1) * gap, columns)
            : 0;
    double each = (width - headRoom - (columns - 1) * gap) / columns;
    Map<String, Scale> scales = scales(plots, columns);
    for (int i = 0; i < plots.size(); i++) {
      double own = i == 0 ? each + headRoom : each;
      boxes.add(box(plots.get(i), scales, own, i == 0 || !beside));
    }
    align(beside && !(plots.get(0) instanceof BarPlot));
    key = new SampleRow(style, letters, keyItems(), width);
    double least = boxes.stream().mapToDouble(PlotBox::leastHeight).max().orElseThrow();
    double top = frame.bodyTop() + key.height();
    int rows = beside ? 1 : plots.size();
    height =
        Math.max(
            rows > 1 ? STACKED * style.chartHeight() : style.chartHeight(),
            top + rows * least + (rows - 1) * gap + frame.footerHeight());
    double free = height - top - frame.footerHeight();
    double rowHeight = (free - (rows - 1) * gap) / rows;
    double left = frame.left();
    double y = top;
    for (int i = 0; i < boxes.size(); i++) {
      double own = i == 0 && beside ? each + headRoom : each + (beside ? 0 : headRoom);
      boxes.get(i).place(new Rectangle2D.Double(left, y, own, rowHeight));
      if (beside) {
        left += own + gap;
      } else {
        y += rowHeight + gap;
      }
    }
  }

  /** Room for the heads of rows at which all plots of bars become equally wide. */
  private double headRoom(BarPlot bars, double width, int columns) {
    double room = 0;
    for (int i = 0; i < ROUNDS; i++) {
      room = BarPlotBox.headRoom(bars, letters, (width - room) / columns + room);
    }
    return room;
  }

  /** Puts plots in line; those of dates beside each other have each their own right end. */
  private void align(boolean ownEnds) {
    double head = boxes.stream().mapToDouble(PlotBox::headRoom).max().orElseThrow();
    double side = boxes.stream().mapToDouble(PlotBox::sideRoom).max().orElseThrow();
    double end = ownEnds ? 0 : boxes.stream().mapToDouble(PlotBox::endRoom).max().orElseThrow();
    boxes.forEach(box -> box.align(head, side, end));
  }

  private PlotBox box(Plot plot, Map<String, Scale> scales, double width, boolean withHeads) {
    if (plot instanceof LinePlot lines) {
      return new LinePlotBox(lines, style, letters, scales.get(plot.unit()), width, keyed);
    } else if (plot instanceof BarPlot bars) {
      if (barLines == 0) {
        barLines = BarPlotBox.lines(bars, letters, width);
      }
      Scale scale = scales.get(plot.unit());
      return new BarPlotBox(bars, style, letters, scale, width, withHeads, barLines);
    }
    return new MapPlotBox((MapPlot) plot, style, letters, width);
  }

  private List<SampleRow.Item> keyItems() {
    List<SampleRow.Item> items = new ArrayList<>();
    for (PlotBox box : boxes) {
      box.key(keyed).stream().filter(item -> !items.contains(item)).forEach(items::add);
    }
    return items;
  }

  /** Plots of the same unit share their axis. */
  private static Map<String, Scale> scales(List<Plot> plots, int columns) {
    Map<String, Double> largest = new HashMap<>();
    for (Plot plot : plots) {
      largest.merge(plot.unit(), largest(plot), Math::max);
    }
    Map<String, Scale> scales = new HashMap<>();
    largest.forEach(
        (unit, most) ->
            scales.put(
                unit,
                Scale.covering(
                    most == 100 ? most : most * HEADROOM,
                    columns > 2 ? MOST_STEPS_OF_MANY : MOST_STEPS)));
    return scales;
  }

  private static double largest(Plot plot) {
    double most = 0;
    if (plot instanceof LinePlot lines) {
      List<Double> values = new ArrayList<>();
      lines.areas().forEach(line -> values.addAll(line.y()));
      lines.lines().forEach(line -> values.addAll(line.y()));
      lines.bands().forEach(band -> values.addAll(band.high()));
      lines.ranges().forEach(range -> values.add(range.high()));
      lines.levels().forEach(level -> values.add(level.value()));
      most = values.stream().mapToDouble(value -> value).max().orElse(0);
    } else if (plot instanceof BarPlot bars) {
      most =
          Math.max(bars.whole(), bars.bars().stream().mapToDouble(BarPlot.Bar::to).max().orElse(0));
    }
    return most;
  }

  /** Words of lines that found no room beside them. */
  Set<String> unlabelled() {
    Set<String> words = new HashSet<>();
    boxes.forEach(box -> words.addAll(box.unlabelled()));
    return words;
  }

  double height() {
    return height;
  }

  void draw(Graphics2D g) {
    frame.draw(g, Math.ceil(height));
    key.draw(g, frame.left(), frame.bodyTop());
    boxes.forEach(box -> box.draw(g));
  }
}
