package org.undercap.cli.chart;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Finds words that leave the page, are too small or touch each other. */
public final class LayoutFaults {
  private static final double SMALLEST = 10;

  private LayoutFaults() {}

  /** Faults of all pages of a chart, in words. */
  public static List<String> of(Chart chart) {
    List<String> faults = new ArrayList<>();
    for (ChartPage page : chart.pages()) {
      Rectangle2D sheet = new Rectangle2D.Double(0, 0, page.width(), page.height());
      List<TextSpy.Written> texts = TextSpy.textsOf(page);
      for (int i = 0; i < texts.size(); i++) {
        TextSpy.Written text = texts.get(i);
        if (!sheet.contains(text.box())) {
          faults.add("outside: " + text);
        }
        if (text.size() < SMALLEST) {
          faults.add("too small: " + text);
        }
        for (TextSpy.Written other : texts.subList(i + 1, texts.size())) {
          if (text.box().intersects(other.box())) {
            faults.add("overlap: " + text + " and " + other);
          }
        }
      }
    }
    return faults;
  }

  /** All words of a chart in drawing order. */
  public static List<String> words(Chart chart) {
    List<String> words = new ArrayList<>();
    for (ChartPage page : chart.pages()) {
      TextSpy.textsOf(page).forEach(text -> words.add(text.text()));
    }
    return words;
  }
}
