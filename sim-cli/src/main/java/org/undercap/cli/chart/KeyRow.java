package org.undercap.cli.chart;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Samples of lines and areas with their words, for charts too narrow to write on each line. */
final class KeyRow {
  private static final double GAP = 6;

  private final ChartStyle style;
  private final Letters letters;
  private final List<List<Meaning>> rows = new ArrayList<>();

  KeyRow(ChartStyle style, Letters letters, List<Meaning> meanings, double width) {
    this.style = style;
    this.letters = letters;
    double used = Double.POSITIVE_INFINITY;
    for (Meaning meaning : meanings) {
      if (used + itemWidth(meaning) > width) {
        rows.add(new ArrayList<>());
        used = 0;
      }
      rows.get(rows.size() - 1).add(meaning);
      used += itemWidth(meaning) + 2 * GAP;
    }
  }

  double height() {
    double below = rows.isEmpty() ? 0 : GAP;
    return rows.size() * (letters.text().lineHeight() + GAP / 2) + below;
  }

  private double sampleWidth() {
    return 3.2 * style.textSize();
  }

  private double itemWidth(Meaning meaning) {
    return sampleWidth() + GAP + letters.text().width(meaning.label());
  }

  void draw(Graphics2D g, double left, double top) {
    double y = top;
    for (List<Meaning> row : rows) {
      double x = left;
      for (Meaning meaning : row) {
        drawSample(g, meaning, x, y);
        g.setColor(Palette.BLACK);
        g.setFont(letters.text().font());
        float base = (float) (y + letters.text().ascent());
        g.drawString(meaning.label(), (float) (x + sampleWidth() + GAP), base);
        x += itemWidth(meaning) + 2 * GAP;
      }
      y += letters.text().lineHeight() + GAP / 2;
    }
  }

  private void drawSample(Graphics2D g, Meaning meaning, double x, double y) {
    double height = letters.text().lineHeight();
    Look look = meaning.look();
    if (meaning == Meaning.BEES || meaning == Meaning.BROOD || meaning == Meaning.TREATMENT) {
      Rectangle2D box = new Rectangle2D.Double(x, y + 2, sampleWidth(), height - 4);
      g.setColor(look.color());
      g.fill(box);
      g.setColor(Palette.DARK_GREY);
      g.setStroke(look.dash().stroke(style.lineWidth() / 2));
      g.draw(box);
      return;
    }
    g.setColor(look.color());
    g.setStroke(look.dash().stroke(style.lineWidth()));
    g.draw(new Line2D.Double(x, y + height / 2, x + sampleWidth(), y + height / 2));
    AffineTransform middle =
        AffineTransform.getTranslateInstance(x + sampleWidth() / 2, y + height / 2);
    g.fill(middle.createTransformedShape(look.marker().shape(1.6 * style.lineWidth())));
  }
}
