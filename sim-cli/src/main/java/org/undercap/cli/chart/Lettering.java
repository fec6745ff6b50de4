package org.undercap.cli.chart;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.font.LineMetrics;
import java.util.ArrayList;
import java.util.List;

/** One font in one size: measures words and breaks them into lines. */
final class Lettering {
  private static final String ELLIPSIS = "\u2026";

  /** The same measures for bitmaps and SVG: no hinting, fractions of a point count. */
  private static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);

  private final Font font;
  private final double ascent;
  private final double descent;

  private Lettering(Font font) {
    this.font = font;
    LineMetrics metrics = font.getLineMetrics("Ag", CONTEXT);
    this.ascent = metrics.getAscent();
    this.descent = metrics.getDescent();
  }

  static Lettering regular(float size) {
    return new Lettering(ChartFonts.shipped().regular(size));
  }

  static Lettering bold(float size) {
    return new Lettering(ChartFonts.shipped().bold(size));
  }

  Font font() {
    return font;
  }

  /** Height of the letters above the base line (points). */
  double ascent() {
    return ascent;
  }

  /** Distance of two lines of text (points). */
  double lineHeight() {
    return ascent + descent;
  }

  /** Width of a line of text (points). */
  double width(String text) {
    return font.getStringBounds(text, CONTEXT).getWidth();
  }

  /** Width of the widest line (points). */
  double width(List<String> lines) {
    double widest = 0;
    for (String line : lines) {
      widest = Math.max(widest, width(line));
    }
    return widest;
  }

  /** Breaks a text at blanks, and a word that is wider than a line between letters. */
  List<String> wrap(String text, double width) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.strip().split("\\s+", -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (width(longer) <= width) {
        line = longer;
        continue;
      }
      if (!line.isEmpty()) {
        lines.add(line);
      }
      line = word;
      while (width(line) > width && line.length() > 1) {
        int fitting = fittingLetters(line, width);
        lines.add(line.substring(0, fitting));
        line = line.substring(fitting);
      }
    }
    lines.add(line);
    return List.copyOf(lines);
  }

  /** Like {@link #wrap(String, double)}, but cut with an ellipsis after some lines. */
  List<String> wrap(String text, double width, int maxLines) {
    List<String> lines = wrap(text, width);
    if (lines.size() <= maxLines) {
      return lines;
    }
    List<String> kept = new ArrayList<>(lines.subList(0, maxLines - 1));
    String last = lines.get(maxLines - 1);
    while (!last.isEmpty() && width(last + ELLIPSIS) > width) {
      last = last.substring(0, last.length() - 1);
    }
    kept.add(last.stripTrailing() + ELLIPSIS);
    return List.copyOf(kept);
  }

  private int fittingLetters(String word, double width) {
    int letters = 1;
    while (letters < word.length() && width(word.substring(0, letters + 1)) <= width) {
      letters++;
    }
    return letters;
  }
}
