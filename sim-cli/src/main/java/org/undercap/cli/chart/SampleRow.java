package org.undercap.cli.chart;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Samples of lines and fillings with their words, on as many rows as it takes. */
final class SampleRow {
  private static final double GAP = 6;

  /** A sample: either a line with its look or a filling. */
  sealed interface Item permits LineItem, FillItem, BandItem {
    String words();
  }

  record LineItem(String words, Look look) implements Item {}

  record BandItem(String words, Look look) implements Item {}

  record FillItem(String words, Fill fill, boolean framed, boolean struck) implements Item {}

  private record Placed(Item item, List<String> lines, double x, double y) {}

  private final ChartStyle style;
  private final Letters letters;
  private final List<Placed> placed = new ArrayList<>();
  private double height;

  SampleRow(ChartStyle style, Letters letters, List<Item> items, double width) {
    this.style = style;
    this.letters = letters;
    double x = 0;
    double y = 0;
    double rowHeight = 0;
    for (Item item : items) {
      List<String> lines = letters.text().wrap(item.words(), width - sampleWidth() - GAP);
      double itemWidth = sampleWidth() + GAP + letters.text().width(lines);
      if (x > 0 && x + itemWidth > width) {
        x = 0;
        y += rowHeight;
        rowHeight = 0;
      }
      placed.add(new Placed(item, lines, x, y));
      x += itemWidth + 2 * GAP;
      rowHeight = Math.max(rowHeight, lines.size() * letters.text().lineHeight() + GAP / 2);
    }
    height = items.isEmpty() ? 0 : y + rowHeight + GAP;
  }

  double height() {
    return height;
  }

  private double sampleWidth() {
    return 2.8 * style.textSize();
  }

  void draw(Graphics2D g, double left, double top) {
    for (Placed each : placed) {
      double x = left + each.x();
      double y = top + each.y();
      sample(g, each.item(), x, y);
      g.setColor(Palette.BLACK);
      g.setFont(letters.text().font());
      double base = y + letters.text().ascent();
      for (String line : each.lines()) {
        g.drawString(line, (float) (x + sampleWidth() + GAP), (float) base);
        base += letters.text().lineHeight();
      }
    }
  }

  private void sample(Graphics2D g, Item item, double x, double y) {
    double lineHeight = letters.text().lineHeight();
    Rectangle2D box = new Rectangle2D.Double(x, y + 2, sampleWidth(), lineHeight - 4);
    if (item instanceof FillItem filled) {
      filled.fill().paint(g, box);
      MapPlotBox.marks(g, box, filled.framed(), filled.struck(), style);
    } else if (item instanceof BandItem band) {
      g.setColor(band.look().color());
      g.fill(box);
      g.setColor(Palette.DARK_GREY);
      g.setStroke(band.look().dash().stroke(style.lineWidth() / 2));
      g.draw(box);
    } else if (item instanceof LineItem line) {
      double middle = y + lineHeight / 2;
      g.setColor(line.look().color());
      g.setStroke(line.look().dash().stroke(style.lineWidth()));
      g.draw(new Line2D.Double(x, middle, x + sampleWidth(), middle));
      marker(g, line.look(), x + sampleWidth() / 2, middle, style.lineWidth());
    }
  }

  /** A marker of a look in its colour. */
  static void marker(Graphics2D g, Look look, double x, double y, double lineWidth) {
    AffineTransform place = AffineTransform.getTranslateInstance(x, y);
    g.setColor(look.color());
    if (look.marker() == Marker.CROSS) {
      g.setStroke(new BasicStroke((float) (lineWidth * 0.8)));
      g.draw(place.createTransformedShape(Marker.CROSS.shape(2 * lineWidth)));
    } else {
      g.fill(place.createTransformedShape(look.marker().shape(1.6 * lineWidth)));
    }
  }
}
